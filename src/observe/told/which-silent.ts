import { cornersOf } from '../../rig/corner.ts';
import { bestOf, playing, REAR } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayWhichSilent: Say = ({ bike }) => {
  if (bike.world.rig.rearFitted === 'no') return CANNOT;
  const [left, right] = REAR.map((corner) => playing(bike, corner));
  if (left === 'silent' && right === 'silent') {
    return option(bestOf(bike, cornersOf('front')) === 'silent' ? 'front-too' : 'both');
  }
  if (left === right) return option(left === 'weak' ? 'weak' : 'plays');
  // Of two that are not alike the worse one is told.
  return option(left === 'silent' || (left === 'weak' && right === 'plays') ? 'left' : 'right');
};
