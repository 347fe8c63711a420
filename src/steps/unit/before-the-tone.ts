import type { Situation } from '../step.ts';
import { smallestDigitV } from '../tools/smallest-digit.ts';

/** What keeps ears and speakers whole where the head unit drives the front: short bursts. */
export function beforeTheTone({ rig, facts }: Situation): readonly string[] {
  const ampKnown = (rig.amps?.length ?? 0) > 0;
  if (smallestDigitV(facts) < 0.1 || (ampKnown && rig.frontFedBy === 'amp')) return [];
  return [
    'Your meter needs 3 V to see the difference. Speakers on the head unit are loud at that: ears covered, bursts under 5 seconds.',
  ];
}
