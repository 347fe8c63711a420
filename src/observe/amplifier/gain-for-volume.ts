import { voltageRatio } from '../../compute/decibel.ts';
import { uglyCorners } from '../../world/symptoms/tone.ts';
import { driverOf } from '../../world/valued-rig.ts';
import { having } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';
import { uglyAt, uglyTrials } from '../ugly.ts';

/** Five steps of two decibels. */
const LOWER_RATIO = voltageRatio({ gainDb: -10 });

export const sayGainForVolume: Say = ofItsAmp((i, { gainRatio: { front, rear } }, { bike }) => {
  const onIt = uglyAt(bike).filter((corner) => driverOf(bike.world.rig, corner) === i);
  if (onIt.length === 0) return CANNOT;
  const up = having(bike, 'gain for volume', { gainRatio: { front: front / LOWER_RATIO, rear: rear / LOWER_RATIO } });
  const harsh = uglyTrials(bike).some(({ volumeRatio = 1, ...trial }) =>
    uglyCorners(up, { ...trial, volumeRatio: LOWER_RATIO * volumeRatio }).some((corner) => onIt.includes(corner)),
  );
  return option(harsh ? 'harsh' : 'clean');
});
