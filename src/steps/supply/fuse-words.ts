import type { Through } from '../runs/through.ts';

/* What is said of a pulled fuse that is read from blade to blade. */

export const FUSE_FORMULA = 'blade to blade = the meter’s leads + a few milliohms of a whole fuse';
export const FUSE_HEALTHY = 'Healthy is what your probes read held together. OL, or thousands of ohms, is open.';
export const FUSE_OUTCOMES = {
  through: 'the fuse conducts',
  unclear: 'a few ohms too many',
  open: 'the fuse is open',
} as const satisfies Readonly<Record<Through, string>>;
