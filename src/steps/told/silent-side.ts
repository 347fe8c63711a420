import { answeredWith } from '../outcome.ts';
import type { Facts } from '../step.ts';

/** The side that was told to be silent alone. */
export const toldSilentSide = (facts: Facts): 'left' | 'right' | undefined =>
  (['left', 'right'] as const).find((side) => answeredWith(facts, 'which-silent', side));
