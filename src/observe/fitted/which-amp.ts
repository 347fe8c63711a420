import { cornersOfAmp } from '../bike.ts';
import { option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';

export const sayWhichAmp: Say = ofAmp(({ bike }) =>
  option(cornersOfAmp(bike).some((corner) => corner.startsWith('rear')) ? 'rear' : 'front'),
);
