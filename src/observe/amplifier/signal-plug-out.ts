import { lampOf } from '../bike.ts';
import { whenToLook } from '../left.ts';
import { option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';

export const saySignalPlugOut: Say = ofAmp(({ bike }) => {
  const lamp = lampOf(bike, { ...whenToLook(bike), toneHz: null, apart: ['amp-inputs'] });
  return option(lamp === 'normal' ? 'clears' : lamp === 'off' ? 'dark' : 'stays');
});
