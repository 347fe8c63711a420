import { atTop, LOUD_TRIALS } from '../../world/symptoms/tone.ts';
import { ampOf, lampOf } from '../bike.ts';
import { option, type Say } from '../observer.ts';
import { thereIsNone } from './amp-light.ts';

export const sayLampAtVolume: Say = (asked) => {
  const { bike } = asked;
  if (ampOf(bike) === null) return thereIsNone(asked);
  return option(LOUD_TRIALS.some((trial) => lampOf(bike, atTop(bike, trial)) !== 'normal') ? 'goes' : 'steady');
};
