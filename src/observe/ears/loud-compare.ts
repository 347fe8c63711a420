import { atTop, clearsRunning, LOUD_TRIALS, uglyCorners } from '../../world/symptoms/tone.ts';
import { option, type Say } from '../observer.ts';

export const sayLoudCompare: Say = ({ bike }) => {
  if (clearsRunning(bike)) return option('cleaner');
  return option(LOUD_TRIALS.some((trial) => uglyCorners(bike, atTop(bike, trial)).length > 0) ? 'ugly' : 'clean');
};
