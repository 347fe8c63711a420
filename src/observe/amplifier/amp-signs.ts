import { ampIsOn } from '../bike.ts';
import { whenToLook } from '../left.ts';
import { option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';

export const sayAmpSigns: Say = ofAmp(({ bike }) => option(ampIsOn(bike, whenToLook(bike)) ? 'alive' : 'dead'));
