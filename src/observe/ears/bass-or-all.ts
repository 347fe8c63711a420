import { voltageRatio } from '../../compute/decibel.ts';
import { MIDDLE_HZ, uglyCorners } from '../../world/symptoms/tone.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { isUgly, onsetDb, uglyTrials } from '../ugly.ts';

/** Nobody stops at the very first step: a step and a half above it. An estimate. */
const ABOVE_DB = 3;

export const sayBassOrAll: Say = ({ bike }) => {
  if (!isUgly(bike)) return CANNOT;
  const volumeRatio = Math.min(voltageRatio({ gainDb: onsetDb(bike) + ABOVE_DB }), bike.world.settings.topVolumeRatio);
  const voices = uglyTrials(bike).filter(({ toneHz }) => toneHz === MIDDLE_HZ);
  return option(voices.some((trial) => uglyCorners(bike, { ...trial, volumeRatio }).length > 0) ? 'all' : 'bass');
};
