import { offered } from '../../steps/outcome.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { heardCorners } from '../../world/symptoms/symptom.ts';
import { ampOf, cornersOfAmp, lampOf } from '../bike.ts';
import { whenToLook, whileOff } from '../left.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';

/** How often the lamp is told as it was when the amplifier failed, and not as it is now. An estimate. */
const TELLS_OF_THEN_SHARE = 0.5;

const ampPlays = (bike: Ridden): boolean => {
  const heard = heardCorners(bike, bike.at({}));
  return cornersOfAmp(bike).some((corner) => heard.includes(corner));
};

/** Who looks at the amplifier of a bike that has none says so, where that is asked. */
export const thereIsNone: Say = ({ step, situation }) =>
  offered(step, situation).some(([name]) => name === 'no-amp') ? option('no-amp') : CANNOT;

export const sayAmpLight: Say = (asked) => {
  const { bike, situation, observer } = asked;
  if (ampOf(bike) === null) return thereIsNone(asked);
  const now = lampOf(bike, whenToLook(bike));
  const then = lampOf(bike, whileOff(bike, situation));
  // Who came because it goes off at times may tell what it showed then.
  const tellsOfThen = now === 'normal' && then === 'fault' && ampPlays(bike);
  return option(tellsOfThen && happens(observer, TELLS_OF_THEN_SHARE) ? then : now);
};
