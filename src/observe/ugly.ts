import { gainFromVoltageRatioDb, voltageRatio } from '../compute/decibel.ts';
import type { Corner } from '../rig/corner.ts';
import type { Moment } from '../world/moment.ts';
import { oncePer } from '../world/remembered.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { atTop, LOUD_TRIALS, uglyCorners } from '../world/symptoms/tone.ts';
import { ampIsOn } from './bike.ts';

/* What a rider hears who plays it at the step at which it is ugly. */

/** What is played: with the engine off, or idling where it is ugly only then. */
export const uglyTrials = oncePer((bike: Ridden): readonly Partial<Moment>[] => {
  const at = (engine: 'off' | 'idle') =>
    LOUD_TRIALS.filter((trial) => trial.engine === engine).map((trial) => atTop(bike, trial));
  return at('off').some((trial) => uglyCorners(bike, trial).length > 0) ? at('off') : at('idle');
});

/** Where it is ugly, with bass or with a voice. `now` is the bike after a hand has changed something. */
export const uglyAt = (bike: Ridden, now = bike): readonly Corner[] => {
  const all = uglyTrials(bike).flatMap((trial) => uglyCorners(now, trial));
  return bike.fitted.filter((corner) => all.includes(corner));
};

/** Whether it is ugly at all, engine off or idling: whoever hears nothing ugly hears nothing of it stop. */
export const isUgly = (bike: Ridden): boolean => uglyAt(bike).length > 0;

/** What is said after a hand has changed something: it is clean only where it was ugly. */
export const cleanAfter = (bike: Ridden, now: Ridden): boolean => isUgly(bike) && uglyAt(bike, now).length === 0;

/** Far below anything that is called loud. */
const LOWEST_DB = -40;
const SEARCHED = 6;

/** The step from which it is ugly, in decibels under a full, flat, just clean output; the lowest where it always is. */
export const onsetDb = oncePer((bike: Ridden): number => {
  const uglyFrom = (db: number) =>
    uglyTrials(bike).some(
      (trial) => uglyCorners(bike, { ...trial, volumeRatio: voltageRatio({ gainDb: db }) }).length > 0,
    );
  if (uglyFrom(LOWEST_DB)) return LOWEST_DB;
  let [clean, ugly] = [LOWEST_DB, gainFromVoltageRatioDb({ voltageRatio: bike.world.settings.topVolumeRatio })];
  for (let i = 0; i < SEARCHED; i++) {
    const middle = (clean + ugly) / 2;
    if (uglyFrom(middle)) ugly = middle;
    else clean = middle;
  }
  return ugly;
});
/** Nobody stops at the very first step: a step and a half above it. An estimate. */
const ABOVE_DB = 3;
/** What is played at the step where it starts to be ugly. */
export const startingTrials = (bike: Ridden): readonly Partial<Moment>[] => {
  const volumeRatio = Math.min(voltageRatio({ gainDb: onsetDb(bike) + ABOVE_DB }), bike.world.settings.topVolumeRatio);
  return uglyTrials(bike).map((trial) => ({ ...trial, volumeRatio }));
};
export const isAlwaysUgly = (bike: Ridden): boolean => onsetDb(bike) <= LOWEST_DB;

/** When the amplifier that is meant goes off at the loudest step of its rider, and a sound one would not. */
export const goesOffAtTop = (bike: Ridden): Partial<Moment> | undefined =>
  ampIsOn(bike)
    ? LOUD_TRIALS.filter((trial) => ampIsOn(bike.healthy(), atTop(bike.healthy(), trial)))
        .map((trial) => atTop(bike, trial))
        .find((moment) => !ampIsOn(bike, moment))
    : undefined;
