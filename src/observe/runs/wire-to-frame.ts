import { REAR } from '../bike.ts';
import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { lowestToFrame } from '../ohms.ts';

export const sayWireToFrame: Say = ({ bike, observer }) => {
  const ohm = lowestToFrame(bike, REAR);
  if (ohm === null) return CANNOT;
  return { readings: { lowestOhm: hold(observer).typed('ohm', ohm + observer.meter.leadsOhm) } };
};
