import { happens, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** How many amplifiers have fuses of their own. An estimate. */
const HAS_OWN_FUSES_SHARE = 0.8;

export const sayBodyFuse: Say = ofItsAmp((_, amp, { observer }) =>
  option(amp.bodyFuseOpen ? 'blown' : happens(observer, HAS_OWN_FUSES_SHARE) ? 'whole' : 'none'),
);
