import type { ConditionId } from '../../steps/conditions.ts';
import { inWords, type Situation, type Step } from '../../steps/step.ts';

/** The words by which a step ends a condition, whether or not it brings it about again: “leave it on” would contradict it. */
const ENDED_BY: Readonly<Partial<Record<ConditionId, RegExp>>> = {
  'engine-running': /engine off/i,
  'tone-400': /stop the tone/i,
  'tone-80': /stop the tone/i,
  'head-unit-playing': /key off/i,
  'music-paused': /key off|music on/i,
  'ugly-step': /key off|volume down|from low/i,
  'key-on': /key off/i,
  'key-off': /key on/i,
  'minus-off': /negative on\b/i,
  'volume-zero': /minutes of (quiet )?music/i,
  'fuse-out': /fit one new fuse/i,
  'amp-outputs-off': /plug one speaker in/i,
};

/** Whether what a step says to do ends a condition that it needs at first. */
export function isEndedBy(id: ConditionId, { how, phone }: Step, situation: Situation): boolean {
  const lines = typeof how === 'function' ? how(situation) : how;
  return ENDED_BY[id]?.test([inWords(phone, situation), ...lines].join(' ')) === true;
}
