import { COMPLAINTS, whenAmpGoesOff } from '../../world/symptoms/index.ts';
import { lampOf } from '../bike.ts';
import { pick } from '../draw.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';
import { goesOffAtTop } from '../ugly.ts';

/** How often nobody can say when. An estimate. */
const NOBODY_KNOWS_SHARE = 0.1;

export const sayAmpGoesOff: Say = ofAmp(({ bike, observer }) => {
  const lamp = lampOf(bike, {});
  if (lamp !== 'normal') return lamp === 'fault' ? option('always') : CANNOT;
  const times = whenAmpGoesOff(bike);
  if (times.length === 0) {
    if (goesOffAtTop(bike)) return option('loud');
    return option(COMPLAINTS['distortion-at-volume'](bike) === 'yes' ? 'ugly' : 'stays-on');
  }
  // Of several, people tell the one that they remember.
  const { when } = pick(observer.draw, times);
  return option(happens(observer, NOBODY_KNOWS_SHARE) ? 'unknown' : when);
});
