import type { Band, Values } from '../step.ts';

/* Whether a speaker wire reaches the frame, wherever along it that is read. */

const TOUCHING_OHM = 100;
const CLEAR_OHM = 100e3;

/** The scale of the lowest reading from any wire to the frame. `touches` is what a wire that does is called. */
export const toFrameBands = (touches: string): readonly Band[] => [
  { label: touches, low: 0, high: TOUCHING_OHM, mood: 'bad' },
  { label: 'unclear', low: TOUCHING_OHM, high: CLEAR_OHM, mood: 'unsure' },
  { label: 'clear', low: CLEAR_OHM, high: Infinity, mood: 'good' },
];

export function judgeToFrame<T extends string>(values: Values, touches: T): T | 'unclear' | 'clear' {
  const ohm = values['lowestOhm'] ?? Infinity;
  return ohm < TOUCHING_OHM ? touches : ohm < CLEAR_OHM ? 'unclear' : 'clear';
}

export const TO_FRAME_FORMULA = 'wire to frame = no path: above 100 kΩ';
