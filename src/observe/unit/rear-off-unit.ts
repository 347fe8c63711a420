import { cornersOf } from '../../rig/corner.ts';
import { driverOf } from '../../world/valued-rig.ts';
import { bestOf, changed, REAR } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { unplugged } from '../unplugged.ts';

const FRONT = cornersOf('front');

export const sayRearOffUnit: Say = ({ bike }) => {
  const { rig } = bike.world;
  if (rig.rearFitted === 'no' || driverOf(rig, 'rear-left') !== 'unit') return CANNOT;
  const apart = changed(bike, 'rear off the unit', (world) => unplugged(world, REAR));
  return option(bestOf(apart, FRONT) !== 'silent' && bestOf(bike, FRONT) === 'silent' ? 'plays' : 'no-change');
};
