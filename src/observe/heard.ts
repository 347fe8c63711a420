import { heardCorners, type Ridden } from '../world/symptoms/symptom.ts';

/** Whether anything is heard of a bike at all. */
export const anyHeard = (bike: Ridden): boolean => heardCorners(bike, bike.at({})).length > 0;

/** Whether something is heard after a change, of a bike that was silent as a whole. */
export const curedEverywhere = (before: Ridden, after: Ridden): boolean => anyHeard(after) && !anyHeard(before);
