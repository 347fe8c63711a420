import { curedEverywhere } from '../heard.ts';
import { playedOn } from '../left.ts';
import { option, type Say } from '../observer.ts';

export const saySourcePlays: Say = ({ bike }) => option(curedEverywhere(bike, playedOn(bike)) ? 'cured' : 'no-change');
