import { happens, option, type Say } from '../observer.ts';

/** How often there never was a headset, and how often the one that gets the sound is found and switched on. Estimates. */
const NO_HEADSET_SHARE = 0.4;
const FOUND_SHARE = 0.8;

export const sayHeadsetHears: Say = ({ bike, observer }) => {
  const [none, found] = [happens(observer, NO_HEADSET_SHARE), happens(observer, FOUND_SHARE)];
  if (bike.world.settings.target !== 'headset') return option(none ? 'none' : 'silent');
  const { paused, muted } = bike.world.settings;
  return option(found && !paused && !muted ? 'hears' : 'silent');
};
