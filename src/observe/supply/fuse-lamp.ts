import { bulbIsBright } from '../bulb-for-fuse.ts';
import { option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

export const sayFuseLamp: Say = ofItsAmp((i, _, { bike }) => option(bulbIsBright(bike, i) ? 'bright' : 'dark'));
