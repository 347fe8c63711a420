import { ampIsOn } from '../bike.ts';
import { option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';

export const sayKeyPositions: Say = ofAmp(({ bike }) => option(ampIsOn(bike, { key: 'accessory' }) ? 'some' : 'none'));
