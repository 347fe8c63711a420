import { unitFlat } from '../left.ts';
import { option, type Say } from '../observer.ts';
import { uglyAt } from '../ugly.ts';

export const sayUnitFlat: Say = ({ bike }) => option(uglyAt(bike, unitFlat(bike)).length === 0 ? 'cured' : 'no-change');
