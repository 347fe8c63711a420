import { cornersOf } from '../../rig/corner.ts';
import { playing } from '../bike.ts';
import { option, type Say } from '../observer.ts';

export const sayFrontPlays: Say = ({ bike }) => {
  const [left, right] = cornersOf('front').map((corner) => playing(bike, corner));
  if (left === right && left) return option(left);
  return option(left === 'silent' || right === 'silent' ? 'one-side' : 'weak');
};
