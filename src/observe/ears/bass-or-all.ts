import { MIDDLE_HZ, uglyCorners } from '../../world/symptoms/tone.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { isUgly, startingTrials } from '../ugly.ts';

export const sayBassOrAll: Say = ({ bike }) => {
  if (!isUgly(bike)) return CANNOT;
  const voices = startingTrials(bike).filter(({ toneHz }) => toneHz === MIDDLE_HZ);
  return option(voices.some((trial) => uglyCorners(bike, trial).length > 0) ? 'all' : 'bass');
};
