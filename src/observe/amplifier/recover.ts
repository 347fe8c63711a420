import { ampIsOn, ampOf } from '../bike.ts';
import { whileOff } from '../left.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';

/** A short that is still there trips again at once: some call that "only by the key", some "each time". */
const CALLED_KEY_CYCLE_SHARE = 0.5;

export const sayRecover: Say = ({ bike, situation, observer }) => {
  const i = ampOf(bike);
  if (i === null) return CANNOT;
  const { now } = bike.at(whileOff(bike, situation));
  const why = now.ok ? now.amps[i]?.why : 'no-supply';
  if (why === 'heat') return option('after-minutes');
  const protects = why === 'short' || why === 'load' || why === 'dc';
  // Volts that dip come back by themselves, and so does a contact that opened on a bump.
  if (why === 'undervoltage' || why === 'overvoltage' || (!protects && ampIsOn(bike))) return option('at-once');
  return option(protects && happens(observer, CALLED_KEY_CYCLE_SHARE) ? 'key-cycle' : 'stays');
};
