import { curedEverywhere } from '../heard.ts';
import { playedOn } from '../left.ts';
import { happens, option, type Say } from '../observer.ts';

/** How often a head unit that a wire holds on mute says so on its screen, and it is seen. An estimate. */
const SAYS_SO_SHARE = 0.75;

export const saySourcePlays: Say = ({ bike, observer }) => {
  const saysSo = happens(observer, SAYS_SO_SHARE);
  if (bike.world.unit.mutedByLine && saysSo) return option('mute-stays');
  return option(curedEverywhere(bike, playedOn(bike)) ? 'cured' : 'no-change');
};
