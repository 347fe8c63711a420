import { atTop, LOUD_TRIALS } from '../../world/symptoms/tone.ts';
import { lampOf } from '../bike.ts';
import { option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';

export const sayLampAtVolume: Say = ofAmp(({ bike }) =>
  option(LOUD_TRIALS.some((trial) => lampOf(bike, atTop(bike, trial)) !== 'normal') ? 'goes' : 'steady'),
);
