import { phoneFlat } from '../left.ts';
import { option, type Say } from '../observer.ts';
import { uglyAt } from '../ugly.ts';

export const sayPhoneFlat: Say = ({ bike }) =>
  option(uglyAt(bike, phoneFlat(bike)).length === 0 ? 'cured' : 'no-change');
