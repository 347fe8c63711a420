import { happens, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** A holder of more than this is burnt, green or slack, and how often that is seen. Estimates. */
const BAD_OHM = 0.02;
const SEEN_SHARE = 0.6;

export const sayFuseLook: Say = ofItsAmp((_, { fuseOpen, holder }, { observer }) => {
  const seen = happens(observer, SEEN_SHARE);
  if (fuseOpen) return option('blown');
  return option(seen && (holder.ohm > BAD_OHM || holder.movedOhm !== undefined) ? 'holder' : 'whole');
});
