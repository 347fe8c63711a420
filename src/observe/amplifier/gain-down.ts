import { whenAmpGoesOff } from '../../world/symptoms/index.ts';
import { ampIsOn, having } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';
import { goesOffAtTop } from '../ugly.ts';

/** The same loud passage with both knobs at half. Whoever never saw it go off when loud has nothing to compare. */
export const sayGainDown: Say = ofItsAmp((_, { gainRatio: { front, rear } }, { bike }) => {
  const loud = whenAmpGoesOff(bike).find(({ when }) => when === 'loud')?.moment ?? goesOffAtTop(bike);
  if (!loud) return CANNOT;
  const halved = having(bike, 'gain at half', { gainRatio: { front: front / 2, rear: rear / 2 } });
  return option(ampIsOn(halved, loud) ? 'stays-on' : 'goes-off');
});
