import { happens, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** How often a sound lead has a breaker and no fuse, and how often one in the heat is not taken for one. Estimates. */
const BREAKER_SHARE = 0.15;
const OVERLOOKED_SHARE = 0.15;

export const sayBreakerLook: Say = ofItsAmp((_, { holder }, { observer }) => {
  const [hasOne, overlooked] = [happens(observer, BREAKER_SHARE), happens(observer, OVERLOOKED_SHARE)];
  if (holder.hotOhm !== undefined) return option(overlooked ? 'cool' : 'hot');
  return option(hasOne ? 'cool' : 'fuse');
});
