import { axleOf, type Corner, cornersOf } from '../../../rig/corner.ts';
import type { Moment, Place } from '../../../world/moment.ts';
import { AS_EVER_RATIO, heardCorners, type Ridden } from '../../../world/symptoms/symptom.ts';

/* What an honest ear hears of an axle, to be told as something else. */

export const heard = (bike: Ridden, axle: 'front' | 'rear', moment: Partial<Moment> = {}): boolean =>
  heardCorners(bike, bike.at(moment)).some((corner) => axleOf(corner) === axle);

const ANYWHERE: readonly Place[] = ['battery', 'amp-supply', 'amp-inputs', 'rear-run', 'lid', 'unit-plug'];
/** A rear that is silent, and plays for a moment when something is moved. */
export const comesAndGoes = (bike: Ridden): boolean =>
  !heard(bike, 'rear') && ANYWHERE.some((place) => heard(bike, 'rear', { moves: [place] }));

/** The rear corners that lost what any ear would miss: silent ones, and weak ones. */
function lost(bike: Ridden, moment: Partial<Moment>): { silent: readonly Corner[]; weak: readonly Corner[] } {
  const seen = bike.at(moment);
  const plays = heardCorners(bike, seen);
  const rear = cornersOf('rear').filter((corner) => bike.fitted.includes(corner));
  const soundW = (corner: Corner) => bike.healthy().at(seen.moment).heard?.[corner].powerW ?? 0;
  return {
    silent: rear.filter((corner) => !plays.includes(corner)),
    weak: rear.filter(
      (corner) => plays.includes(corner) && (seen.heard?.[corner].powerW ?? 0) < AS_EVER_RATIO * soundW(corner),
    ),
  };
}
/** Both rear speakers play, and each of them far too quietly. */
export const isQuiet = (bike: Ridden, moment: Partial<Moment> = {}): boolean => lost(bike, moment).weak.length === 2;
/** One rear speaker plays as ever, and the other does not. */
export function isOneSided(bike: Ridden): boolean {
  const { silent, weak } = lost(bike, {});
  return silent.length + weak.length === 1;
}
