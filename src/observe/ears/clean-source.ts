import { phoneFlat } from '../left.ts';
import { option, type Say } from '../observer.ts';
import { uglyAt } from '../ugly.ts';

/** Another source brings what the phone has not touched. */
export const sayCleanSource: Say = ({ bike }) => option(uglyAt(bike, phoneFlat(bike)).length === 0 ? 'good' : 'same');
