import { option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

export const sayFuseLook: Say = ofItsAmp((_, amp) => option(amp.fuseOpen ? 'blown' : 'whole'));
