import { happens, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** How often water in an amplifier shows from outside. An estimate. */
const SHOWS_SHARE = 0.8;

export const sayWaterLook: Say = ofItsAmp((_, { wet }, { observer }) =>
  option(wet !== 'no' && happens(observer, SHOWS_SHARE) ? 'wet' : 'dry'),
);
