import { bulbInPlace } from '../bulb-for-fuse.ts';
import { option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

export const sayFuseLamp: Say = ofItsAmp((i, _, { bike }) => option(bulbInPlace(bike, i)));
