import { ampOf, inputNotHome, lampOf } from '../bike.ts';
import { signalHome } from '../left.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';

/** How often a plug that is not home hangs out for everybody to see. An estimate. */
const HANGS_OUT_SHARE = 0.5;

export const sayInputPlug: Say = ({ bike, observer }) => {
  if (ampOf(bike) === null) return CANNOT;
  const home = signalHome(bike);
  const [before, after] = [lampOf(bike, {}), lampOf(home, {})];
  if (before === after || after === 'off') return option('no-change');
  if (after !== 'normal') return option('fault');
  return option(inputNotHome(bike) && happens(observer, HANGS_OUT_SHARE) ? 'out' : 'cured');
};
