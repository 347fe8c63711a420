import { phoneFlat } from '../left.ts';
import { option, type Say } from '../observer.ts';
import { cleanAfter } from '../ugly.ts';

export const sayPhoneFlat: Say = ({ bike }) => option(cleanAfter(bike, phoneFlat(bike)) ? 'cured' : 'no-change');
