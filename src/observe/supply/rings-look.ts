import { happens, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** A joint of more than this shows: loose, green, or with paint under it. An estimate. */
const SEEN_OHM = 0.02;
/** How often that is seen: paint and rust lie under a ring. An estimate. */
const FOUND_SHARE = 0.9;
/** A ground that is seen to be thinner than the positive lead. An estimate. */
const THINNER_RATIO = 0.4;

export const sayRingsLook: Say = ofItsAmp((_, { minusRing, groundRing, groundLead, plusLead }, { bike, observer }) => {
  const found = happens(observer, FOUND_SHARE);
  const { sharedScrew } = bike.world.supply;
  const screwOhm = sharedScrew?.holds === 'both' ? sharedScrew.joint.ohm : 0;
  if (found && minusRing.ohm > SEEN_OHM) return option('battery');
  if (found && Math.max(groundRing.ohm, screwOhm) > SEEN_OHM) return option('ground');
  return option(groundLead.sectionM2 < THINNER_RATIO * plusLead.sectionM2 ? 'thin' : 'tight');
});
