import { cornersOfAmp } from '../bike.ts';
import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { lowestToFrame } from '../ohms.ts';

export const sayAmpWiresToFrame: Say = ({ bike, observer }) => {
  const ohm = lowestToFrame(bike, cornersOfAmp(bike));
  return ohm === null
    ? CANNOT
    : { readings: { lowestOhm: hold(observer).typed('ohm', ohm + observer.meter.leadsOhm) } };
};
