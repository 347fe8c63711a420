import { heardCorners, type Ridden } from '../world/symptoms/symptom.ts';
import { playing } from './bike.ts';

/** Whether anything is heard of a bike at all. */
export const anyHeard = (bike: Ridden): boolean => heardCorners(bike, bike.at({})).length > 0;

/** The best that is heard anywhere after something was done, next to what was heard before. */
export const curedEverywhere = (before: Ridden, after: Ridden): boolean => anyHeard(after) && !anyHeard(before);

/** Whether a pair of speakers is heard on a bike. */
export const axleHeard = (bike: Ridden, corners: readonly (typeof bike.fitted)[number][]): boolean =>
  corners.some((corner) => bike.fitted.includes(corner) && playing(bike, corner) !== 'silent');
