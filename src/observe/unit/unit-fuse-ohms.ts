import { hold } from '../hand.ts';
import { happens, type Say } from '../observer.ts';

/** How often the one that is open is among those that are read: a meter sees a broken strip, and not the fuse that nobody found. An estimate. */
const READ_SHARE = 0.95;

export const sayUnitFuseOhms: Say = ({ bike, observer }) => {
  const open = happens(observer, READ_SHARE) && bike.world.unit.fuseOpen;
  return { readings: { fuseOhm: hold(observer).typed('ohm', open ? Infinity : observer.meter.leadsOhm) } };
};
