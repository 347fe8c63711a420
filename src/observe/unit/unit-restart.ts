import { curedEverywhere } from '../heard.ts';
import { restarted } from '../left.ts';
import { option, type Say } from '../observer.ts';

export const sayUnitRestart: Say = ({ bike }) => option(curedEverywhere(bike, restarted(bike)) ? 'cured' : 'no-change');
