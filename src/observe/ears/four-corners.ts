import { axleOf, type Corner, sideOf } from '../../rig/corner.ts';
import type { Moment } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { AS_EVER_RATIO, DROWNED_RATIO } from '../../world/symptoms/symptom.ts';
import { REAR } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

/** Where the fader and the balance are moved to, to hear each corner by itself. */
const ENDS: readonly Partial<Moment>[] = [
  { fader: -1, balance: 0 },
  { fader: 1, balance: 0 },
  { fader: 0, balance: -1 },
  { fader: 0, balance: 1 },
];

const wattsAtEnds = (bike: Ridden, corner: Corner) =>
  Math.max(...ENDS.map((end) => bike.at(end).heard?.[corner].powerW ?? 0));

/** Whether both rear corners have lost so much at every end that they are called weak. */
const rearIsWeak = (bike: Ridden): boolean =>
  REAR.every((corner) => wattsAtEnds(bike, corner) < AS_EVER_RATIO * wattsAtEnds(bike.healthy(), corner));

/** The corners that are heard at one end or another. What is far under the loudest is silent to whoever compares. */
function heardAtEnds(bike: Ridden): readonly Corner[] {
  const watts = (corner: Corner) => wattsAtEnds(bike, corner);
  const plays = (corner: Corner) => ENDS.some((end) => bike.at(end).heard?.[corner].plays);
  const loudestW = Math.max(...bike.fitted.map(watts));
  return bike.fitted.filter((corner) => plays(corner) && watts(corner) > DROWNED_RATIO * loudestW);
}

function cornersSay(bike: Ridden) {
  const silent = bike.fitted.filter((corner) => !heardAtEnds(bike).includes(corner));
  const rear = silent.filter((corner) => axleOf(corner) === 'rear');
  const [first] = silent;
  if (silent.length === 0) return option(rearIsWeak(bike) ? 'rear-weak' : 'all');
  if (silent.length === bike.fitted.length) return option('none');
  if (rear.length === 2 && silent.length === 2) return option('no-rear');
  if (silent.length === 1 && rear.length === 1) return option('one-corner');
  if (silent.length === 2 && first && silent.every((corner) => sideOf(corner) === sideOf(first))) {
    return option('one-side');
  }
  return option('other');
}

export const sayFourCorners: Say = ({ bike }) => (bike.world.rig.rearFitted === 'yes' ? cornersSay(bike) : CANNOT);
