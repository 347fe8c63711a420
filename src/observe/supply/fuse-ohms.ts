import { hold } from '../hand.ts';
import type { Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** The old fuse, which nobody puts back. */
export const sayFuseOhms: Say = ofItsAmp((_, { fuseOpen }, { observer }) => ({
  readings: { fuseOhm: hold(observer).typed('ohm', fuseOpen ? Infinity : observer.meter.leadsOhm) },
}));
