import { gainFromPowerRatioDb, voltageRatio } from '../../compute/decibel.ts';
import type { Moment } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { atTop, MIDDLE_HZ } from '../../world/symptoms/tone.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { isAlwaysUgly, onsetDb } from '../ugly.ts';

/** So much quieter than a sound bike of the build is called far too quiet, give or take. Estimates. */
const TOO_QUIET_DB = -9;
const DIFFERS_DB = 3;
/** A step under the first ugly one. */
const A_STEP_DB = 2;

const loudestW = (bike: Ridden, moment: Partial<Moment>): number => {
  const { heard } = bike.at({ toneHz: MIDDLE_HZ, ...moment });
  return heard ? Math.max(...bike.fitted.map((corner) => heard[corner].powerW)) : 0;
};

export const sayCleanEnough: Say = ({ bike, observer }) => {
  if (isAlwaysUgly(bike)) return CANNOT;
  const cleanW = loudestW(bike, { volumeRatio: voltageRatio({ gainDb: onsetDb(bike) - A_STEP_DB }) });
  const soundW = loudestW(bike.healthy(), atTop(bike.healthy(), {}));
  if (cleanW <= 0 || soundW <= 0) return CANNOT;
  const db = gainFromPowerRatioDb({ powerRatio: cleanW / soundW }) + (2 * observer.draw() - 1) * DIFFERS_DB;
  return option(db < TOO_QUIET_DB ? 'quiet' : 'enough');
};
