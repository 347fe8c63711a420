import { curedEverywhere } from '../heard.ts';
import { muteWireOff } from '../left.ts';
import { happens, option, type Say } from '../observer.ts';

/** How often a head unit has no such wire, and how often the one that is on ground is found. Estimates. */
const NONE_SHARE = 0.4;
const FOUND_SHARE = 0.9;

export const sayMuteWire: Say = ({ bike, observer }) => {
  const [none, found] = [happens(observer, NONE_SHARE), happens(observer, FOUND_SHARE)];
  if (!bike.world.unit.mutedByLine) return option(none ? 'none' : 'no-change');
  if (!found) return option('none');
  return option(curedEverywhere(bike, muteWireOff(bike)) ? 'cured' : 'no-change');
};
