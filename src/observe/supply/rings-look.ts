import { option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** A joint of more than this shows: loose, green, or with paint under it. An estimate. */
const SEEN_OHM = 0.02;

export const sayRingsLook: Say = ofItsAmp((_, { minusRing, groundRing }, { bike }) => {
  const { sharedScrew } = bike.world.supply;
  const screwOhm = sharedScrew?.holds === 'both' ? sharedScrew.joint.ohm : 0;
  if (minusRing.ohm > SEEN_OHM) return option('battery');
  return option(Math.max(groundRing.ohm, screwOhm) > SEEN_OHM ? 'ground' : 'tight');
});
