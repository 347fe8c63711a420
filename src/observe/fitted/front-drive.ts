import { driverOf, type ValuedRig } from '../../world/valued-rig.ts';
import { option, type Say } from '../observer.ts';

/** What drives the front, next to the amplifier of the rear. */
function frontOf(rig: ValuedRig): 'same' | 'unit' | 'other' {
  const front = driverOf(rig, 'front-left');
  if (front === 'unit') return 'unit';
  return front === driverOf(rig, 'rear-left') ? 'same' : 'other';
}

export const sayFrontDrive: Say = ({ bike }) => option(frontOf(bike.world.rig));
