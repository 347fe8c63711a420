import { CANNOT, option, type Say } from '../observer.ts';
import { isUgly, onsetDb } from '../ugly.ts';

/** The last steps of a scale, and its last quarter, in decibels under its end. From memory: two decibels a step. */
const NEAR_TOP_DB = -5;
const UPPER_DB = -13;
/** One step to either side is what people differ by. An estimate. */
const DIFFERS_DB = 2;

export const sayVolumeOnset: Say = ({ bike, observer }) => {
  const db = onsetDb(bike) + (2 * observer.draw() - 1) * DIFFERS_DB;
  if (!isUgly(bike)) return CANNOT;
  return option(db > NEAR_TOP_DB ? 'near-top' : db > UPPER_DB ? 'upper' : 'middle');
};
