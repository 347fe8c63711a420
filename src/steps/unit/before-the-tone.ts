import { chosen } from '../../rig/rig.ts';
import type { Situation } from '../step.ts';
import { smallestDigitV } from '../tools/smallest-digit.ts';

/** What keeps ears and speakers whole: no speaker on an amplifier, and short bursts where the head unit drives them. */
export function beforeTheTone({ rig, facts }: Situation): readonly string[] {
  const ampKnown = (rig.amps?.length ?? 0) > 0;
  return [
    ...(rig.amps?.length === 0 ? [] : ['An amplifier on the bike: key off, speakers off the amplifier, key on.']),
    ...(smallestDigitV(facts) >= 0.1 && !(ampKnown && rig.frontFedBy === 'amp')
      ? [
          'Your meter needs 3 V to see the difference. Speakers on the head unit are loud then: ears covered, bursts under 5 seconds.',
        ]
      : []),
  ];
}

/** A short on the run silences an output that is switched on. With the run unplugged it cannot. */
export const rearUnplugged = ({ rig }: Situation): readonly string[] =>
  chosen(rig, 'rearFedBy') === 'amp'
    ? []
    : [
        'Key off, rear speakers unplugged at any plug you can reach, key on: a short on their wires cannot hide a live output then.',
      ];
