import { clipping } from './clipping.ts';
import type { Figure } from './figure.ts';
import { highPassSlopes } from './high-pass.ts';
import { polaritySum } from './polarity.ts';

/** The figures that an article can name. */
export const FIGURES: Readonly<Record<string, Figure>> = {
  clipping,
  'high-pass': highPassSlopes,
  polarity: polaritySum,
};
