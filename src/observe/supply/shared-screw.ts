import { CANNOT, happens, option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';

/** How often the ground of the head unit can be followed to where it ends. An estimate. */
const SEEN_SHARE = 0.7;

export const saySharedScrew: Say = ofAmp(({ bike, observer }) => {
  if (!happens(observer, SEEN_SHARE)) return CANNOT;
  return option(bike.world.supply.sharedScrew?.holds === 'both' ? 'shared' : 'own');
});
