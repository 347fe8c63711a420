import { cornersOf } from '../../rig/corner.ts';
import { hold } from '../hand.ts';
import { axleAsked, CANNOT, type Say } from '../observer.ts';
import { lowestToFrame } from '../ohms.ts';

export const sayWireToFrame: Say = (asked) => {
  const { bike, observer } = asked;
  const ohm = lowestToFrame(bike, cornersOf(axleAsked(asked)));
  if (ohm === null) return CANNOT;
  return { readings: { lowestOhm: hold(observer).typed('ohm', ohm + observer.meter.leadsOhm) } };
};
