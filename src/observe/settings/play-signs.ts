import { happens, option, type Say } from '../observer.ts';

/** How often a phone that stands still or is right down is seen to be, and a head unit that is muted says so. Estimates. */
const SEEN_SHARE = 0.9;
const SAYS_SO_SHARE = 0.75;

export const sayPlaySigns: Say = ({ bike, observer }) => {
  const [seen, saysSo] = [happens(observer, SEEN_SHARE), happens(observer, SAYS_SO_SHARE)];
  const { settings, unit } = bike.world;
  if (settings.paused && seen) return option('paused');
  return option((settings.muted || unit.mutedByLine) && saysSo ? 'muted' : 'clear');
};
