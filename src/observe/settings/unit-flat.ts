import { unitFlat } from '../left.ts';
import { option, type Say } from '../observer.ts';
import { cleanAfter } from '../ugly.ts';

export const sayUnitFlat: Say = ({ bike }) => option(cleanAfter(bike, unitFlat(bike)) ? 'cured' : 'no-change');
