import { OPEN } from '../../world/healthy.ts';
import { having } from '../bike.ts';
import { bulbInPlace } from '../bulb-for-fuse.ts';
import { option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

export const sayLeadOffAmp: Say = ofItsAmp((i, _, { bike }) => {
  const off = having(bike, 'positive lead off', { alive: false, shortInside: OPEN });
  const glow = bulbInPlace(off, i);
  return option(glow !== 'dark' && glow === bulbInPlace(bike, i) ? 'bright' : 'dark');
});
