import { CORNERS } from '../../rig/corner.ts';
import { driverOf } from '../../world/valued-rig.ts';
import { hold } from '../hand.ts';
import type { Say } from '../observer.ts';
import { lowestToFrame } from '../ohms.ts';

/** In the plug of the unit all that hangs on its pairs is seen: its own runs, and what an amplifier's input joins to ground. */
export const sayUnitWiresToFrame: Say = ({ bike, observer }) => {
  const { unit, rig } = bike.world;
  const own = bike.fitted.filter((corner) => driverOf(rig, corner) === 'unit');
  const ohm = Math.min(lowestToFrame(bike, own) ?? Infinity, ...CORNERS.map((corner) => unit.toGround[corner].ohm));
  return { readings: { lowestOhm: hold(observer).typed('ohm', ohm + observer.meter.leadsOhm) } };
};
