import { whenAmpGoesOff } from '../../world/symptoms/index.ts';
import { lampOf } from '../bike.ts';
import { pick } from '../draw.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';

export const sayAmpGoesOff: Say = ofAmp(({ bike, observer }) => {
  const lamp = lampOf(bike, {});
  if (lamp !== 'normal') return lamp === 'fault' ? option('always') : CANNOT;
  const times = whenAmpGoesOff(bike);
  // Of several, people tell the one that they remember.
  return option(times.length > 0 ? pick(observer.draw, times).when : 'stays-on');
});
