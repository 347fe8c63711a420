import { happens, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** A holder of more than this is burnt, green or slack, and how often that is seen. Estimates. */
const BAD_OHM = 0.02;
const SEEN_SHARE = 0.6;
/** How often an open fuse shows it: the others are open at their cap, or behind dull plastic. An estimate. */
const BURNT_SHARE = 0.9;

export const sayFuseLook: Say = ofItsAmp((_, { fuseOpen, holder }, { observer }) => {
  const [seen, burnt] = [happens(observer, SEEN_SHARE), happens(observer, BURNT_SHARE)];
  if (fuseOpen && burnt) return option('blown');
  return option(seen && (holder.ohm > BAD_OHM || holder.movedOhm !== undefined) ? 'holder' : 'whole');
});
