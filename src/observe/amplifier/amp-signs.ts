import { lampOf } from '../bike.ts';
import { whenToLook } from '../left.ts';
import { option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';

/** What it does, whatever its lamp would show. One that protects itself is on, and gives nothing to hear or feel. */
const SIGN = { normal: 'alive', blinks: 'cycles', fault: 'dead', off: 'dead' } as const;

export const sayAmpSigns: Say = ofAmp(({ bike }) => option(SIGN[lampOf(bike, whenToLook(bike))]));
