import { cornersOfAmp } from '../bike.ts';
import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { runOf } from '../ohms.ts';

export const sayAmpRuns: Say = ({ bike, observer }) => {
  const read = cornersOfAmp(bike).map((corner) => runOf(bike, corner) ?? Infinity);
  if (read.length === 0) return CANNOT;
  const hand = hold(observer);
  const { leadsOhm } = observer.meter;
  const lowest = Math.min(...read) + leadsOhm;
  return { readings: { leadsOhm: hand.typed('ohm', leadsOhm), lowestOhm: hand.typed('ohm', lowest) } };
};
