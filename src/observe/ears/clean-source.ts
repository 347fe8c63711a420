import { phoneFlat } from '../left.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { cleanAfter, isUgly } from '../ugly.ts';

/** Another source brings what the phone has not touched. */
export const sayCleanSource: Say = ({ bike }) =>
  isUgly(bike) ? option(cleanAfter(bike, phoneFlat(bike)) ? 'good' : 'same') : CANNOT;
