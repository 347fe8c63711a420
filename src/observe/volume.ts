import { QUIET_PEAK_DBFS } from '../sound/tone.ts';
import { ORDINARY_VOLUME } from '../world/moment.ts';

/** Steps of a volume control, in decibels under its end. From memory: two decibels a step, some thirty steps. */
const STEP_DB = 2;

const STEPS = 30;

/** From the lowest step to the loudest. */
export const VOLUME_STEPS: readonly number[] = Array.from(
  { length: STEPS },
  (_, i) => 10 ** (((i + 1 - STEPS) * STEP_DB) / 20),
);

/** The steps from which something reads at least so much, the lowest first. None where it reads nothing at all. */
export function stepsFrom(leastV: number, readV: (volumeRatio: number) => number): readonly number[] {
  const ordinaryV = readV(ORDINARY_VOLUME);
  if (ordinaryV <= 0) return [];
  // Below clipping volts are in proportion to the volume, so one reading tells where to begin.
  const guess = (ORDINARY_VOLUME * leastV) / ordinaryV;
  return VOLUME_STEPS.filter((step) => step >= guess * (1 - 1e-9));
}

/** What is left of a quiet tone at each step: 15 dB under a loud one. */
const QUIET_RATIO = 10 ** (QUIET_PEAK_DBFS / 20);
/** A step that reads so little of what is wanted is not near it. */
const NEAR_RATIO = 0.6;

/** The same steps with the quiet tones, or with the loud ones where those do not come near. */
export function quietFirst(wantedV: number, readV: (volumeRatio: number) => number): readonly number[] {
  const loudest = VOLUME_STEPS.at(-1) as number;
  const quietV = (volumeRatio: number) => readV(QUIET_RATIO * volumeRatio);
  if (quietV(loudest) < NEAR_RATIO * wantedV) return stepsNear(wantedV, readV);
  return stepsNear(wantedV, quietV).map((step) => QUIET_RATIO * step);
}

/** The step at which something reads nearest to so many volts, and then the steps below it. */
export function stepsNear(wantedV: number, readV: (volumeRatio: number) => number): readonly number[] {
  const ordinaryV = readV(ORDINARY_VOLUME);
  if (ordinaryV <= 0) return [];
  const guess = (ORDINARY_VOLUME * wantedV) / ordinaryV;
  const off = (step: number) => Math.abs(Math.log(step / guess));
  const nearest = VOLUME_STEPS.reduce((best, step) => (off(step) < off(best) ? step : best));
  return VOLUME_STEPS.filter((step) => step <= nearest).toReversed();
}
