import { type Band, labelIn } from '../step.ts';

/** A whole fuse or lead has a few tenths of an ohm at most, and the leads of a meter half of one. Common practice, no published source. */
const THROUGH_OHM = 2;
/** Probes on dull metal read a little more. More than this is a gap that dirt bridges. An estimate. */
const OPEN_OHM = 20;

/** Whether something that should conduct does, by its ohms from end to end. */
export const THROUGH_BANDS: readonly Band[] = [
  { label: 'through', low: 0, high: THROUGH_OHM, mood: 'good' },
  { label: 'unclear', low: THROUGH_OHM, high: OPEN_OHM, mood: 'unsure' },
  { label: 'open', low: OPEN_OHM, high: Infinity, mood: 'bad' },
];

export type Through = 'through' | 'unclear' | 'open';
export function readsThrough(ohm: number): Through {
  const label = labelIn(THROUGH_BANDS, ohm);
  return label === 'through' || label === 'open' ? label : 'unclear';
}
