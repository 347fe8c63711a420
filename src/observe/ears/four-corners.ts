import { type Axle, axleOf, type Corner, cornersOf, sideOf } from '../../rig/corner.ts';
import type { Moment } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { AS_EVER_RATIO, DROWNED_RATIO } from '../../world/symptoms/symptom.ts';
import { axleAsked, CANNOT, option, type Say } from '../observer.ts';

/** Where the fader and the balance are moved to, to hear each corner by itself. */
const ENDS: readonly Partial<Moment>[] = [
  { fader: -1, balance: 0 },
  { fader: 1, balance: 0 },
  { fader: 0, balance: -1 },
  { fader: 0, balance: 1 },
];

const wattsAtEnds = (bike: Ridden, corner: Corner) =>
  Math.max(...ENDS.map((end) => bike.at(end).heard?.[corner].powerW ?? 0));

/** Whether both corners of an axle have lost so much at every end that they are called weak. */
const isWeak = (bike: Ridden, axle: Axle): boolean =>
  cornersOf(axle).every((corner) => wattsAtEnds(bike, corner) < AS_EVER_RATIO * wattsAtEnds(bike.healthy(), corner));

/** The corners that are heard at one end or another. What is far under the loudest is silent to whoever compares. */
function heardAtEnds(bike: Ridden): readonly Corner[] {
  const watts = (corner: Corner) => wattsAtEnds(bike, corner);
  const plays = (corner: Corner) => ENDS.some((end) => bike.at(end).heard?.[corner].plays);
  const loudestW = Math.max(...bike.fitted.map(watts));
  return bike.fitted.filter((corner) => plays(corner) && watts(corner) > DROWNED_RATIO * loudestW);
}

function cornersSay(bike: Ridden, axle: Axle) {
  const silent = bike.fitted.filter((corner) => !heardAtEnds(bike).includes(corner));
  const own = silent.filter((corner) => axleOf(corner) === axle);
  const [first] = silent;
  if (silent.length === 0) return option(isWeak(bike, axle) ? `${axle}-weak` : 'all');
  if (silent.length === bike.fitted.length) return option('none');
  if (own.length === 2 && silent.length === 2) return option(`no-${axle}`);
  if (silent.length === 1 && own.length === 1) return option('one-corner');
  if (silent.length === 2 && first && silent.every((corner) => sideOf(corner) === sideOf(first))) {
    return option('one-side');
  }
  return option('other');
}

export const sayFourCorners: Say = (asked) =>
  asked.bike.world.rig.rearFitted === 'yes' ? cornersSay(asked.bike, axleAsked(asked)) : CANNOT;
