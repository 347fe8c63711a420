import { option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** A joint of more than this shows: loose, green, or with paint under it. An estimate. */
const SEEN_OHM = 0.02;

export const sayRingsLook: Say = ofItsAmp((_, { minusRing, groundRing }) =>
  option(minusRing.ohm > SEEN_OHM ? 'battery' : groundRing.ohm > SEEN_OHM ? 'ground' : 'tight'),
);
