import { cornersOf } from '../../rig/corner.ts';
import { hold } from '../hand.ts';
import { axleAsked, CANNOT, type Say } from '../observer.ts';
import { runOf } from '../ohms.ts';

export const sayRunOhms: Say = (asked) => {
  const { bike, observer } = asked;
  const [left, right] = cornersOf(axleAsked(asked)).map((corner) => runOf(bike, corner));
  if (left == null || right == null) return CANNOT;
  const hand = hold(observer);
  const { leadsOhm } = observer.meter;
  const typed = (ohm: number) => hand.typed('ohm', ohm + leadsOhm);
  return { readings: { leadsOhm: typed(0), leftOhm: typed(left), rightOhm: typed(right) } };
};
