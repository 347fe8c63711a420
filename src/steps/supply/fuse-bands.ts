import { type Band, labelIn } from '../step.ts';

/** A whole fuse has some milliohms, and the leads of a meter half an ohm at most. Common practice, no published source. */
const THROUGH_OHM = 2;
/** Probes on dull blades read a little more. More than this is a fuse that dirt bridges. An estimate. */
const OPEN_OHM = 20;

export const FUSE_BANDS: readonly Band[] = [
  { label: 'through', low: 0, high: THROUGH_OHM, mood: 'good' },
  { label: 'unclear', low: THROUGH_OHM, high: OPEN_OHM, mood: 'unsure' },
  { label: 'open', low: OPEN_OHM, high: Infinity, mood: 'bad' },
];

export type FuseReads = 'through' | 'unclear' | 'open';
/** What the ohms from blade to blade of a pulled fuse say of it. */
export function fuseReads(fuseOhm: number): FuseReads {
  const label = labelIn(FUSE_BANDS, fuseOhm);
  return label === 'through' || label === 'open' ? label : 'unclear';
}

export const FUSE_FORMULA = 'blade to blade = the meter’s leads + a few milliohms of a whole fuse';
export const FUSE_HEALTHY = 'Healthy is what your probes read held together. OL, or thousands of ohms, is open.';
export const FUSE_OUTCOMES = {
  through: 'the fuse conducts',
  unclear: 'a few ohms too many',
  open: 'the fuse is open',
} as const satisfies Readonly<Record<FuseReads, string>>;
