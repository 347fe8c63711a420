import { type Axle, cornersOf } from '../../rig/corner.ts';
import { option, type Say } from '../observer.ts';

/** By sign: where both of an axle push the same way, and both axles do, nothing comes back at an end. */
export const sayEndsCompare: Say = ({ bike }) => {
  const signsOf = (axle: Axle) =>
    cornersOf(axle)
      .filter((corner) => bike.fitted.includes(corner))
      .map((corner) => bike.world.runs[corner].reversed);
  const [front, rear] = [signsOf('front'), signsOf('rear')];
  const areOpposed = (signs: readonly boolean[]) => new Set(signs).size > 1;
  if (areOpposed(front)) return option('front');
  if (areOpposed(rear)) return option('rear');
  return option(areOpposed([...front, ...rear]) ? 'between' : 'none');
};
