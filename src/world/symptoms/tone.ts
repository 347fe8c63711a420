import type { Corner } from '../../rig/corner.ts';
import { TONES } from '../../sound/tone.ts';
import { coilsOhm } from '../hear.ts';
import type { Moment } from '../moment.ts';
import { type Complaint, heardCorners, type Ridden, yesIf } from './symptom.ts';

/* Limits are estimates: what ears call harsh, thin or changed has no published limit on a motorcycle. */

/** Overdrive from which a tone is heard as harsh: 1 dB is a distortion of 5 %. */
export const HARSH_DB = 1;
/** A share by which a tone, over another, has to move before an ear takes note. */
const CHANGED_RATIO = 1.2;
const MASKED_DB = 5;
/** Bass missing by so much is called thin. */
const THIN_DB = 4;
/** A speaker that gets a quarter more than it is rated for travels too far. */
const OVER_RATED_RATIO = 1.25;
const RIPPED_LEAK_DB = 6;

const BASS_HZ = 80;
const MIDDLE_HZ = 400;
const HZ = [...new Set(TONES.map(({ frequencyHz }) => frequencyHz))];

/** Volts at the coils of a corner, with the sign of its polarity. */
function signedV(bike: Ridden, moment: Partial<Moment>, corner: Corner): number {
  const heard = bike.at(moment).heard?.[corner];
  if (!heard) return 0;
  return heard.polarity * Math.sqrt(heard.powerW * coilsOhm(bike.world, corner)) * 10 ** (-heard.leakDb / 20);
}

/** Bass of all corners together, where waves add up by sign, over the middle, where they do not. In decibels. */
function bassDb(bike: Ridden, engine: Moment['engine']): number {
  const bassV = bike.fitted.reduce((sum, corner) => sum + signedV(bike, { toneHz: BASS_HZ, engine }, corner), 0);
  const leaks = (corner: Corner) => 10 ** ((bike.world.speakers[corner].leakDb ?? 0) / 20);
  const middleV = bike.fitted.reduce(
    (sum, corner) => sum + Math.abs(signedV(bike, { toneHz: MIDDLE_HZ, engine }, corner)) * leaks(corner),
    0,
  );
  return middleV === 0 ? Number.NaN : 20 * Math.log10(Math.max(1e-3, Math.abs(bassV) / middleV));
}

/** It plays, with less bass than a sound bike of its build has, or with bass that is covered at speed. */
export function thinNoBass(bike: Ridden): Complaint {
  const [ours, sound] = [bassDb(bike, 'off'), bassDb(bike.healthy(), 'off')];
  return yesIf(ours < sound - THIN_DB || bike.world.maskedBassDb > MASKED_DB);
}

/** At the loudest step its rider uses, something is cut off, scrapes, or falls away under load; that of a sound bike is clean. */
export function distortionAtVolume(bike: Ridden): Complaint {
  // A bass beat draws what a full sine draws, for as long as it lasts.
  const averageRatio = 1;
  const harsh = (it: Ridden, trial: Partial<Moment>) => {
    const { now, heard } = it.at({ ...trial, volumeRatio: it.world.settings.topVolumeRatio });
    if (!now.ok || !heard) return true;
    const chatters = now.amps.some(({ why }) => why === 'undervoltage' || why === 'load');
    return (
      chatters ||
      it.fitted.some((corner) => {
        const { overdriveDb, scrapes, leakDb, powerW } = heard[corner];
        const overRated = powerW > OVER_RATED_RATIO * averageRatio * it.world.speakers[corner].ratedW;
        return overdriveDb > HARSH_DB || scrapes || leakDb >= RIPPED_LEAK_DB || overRated;
      })
    );
  };
  const trials = ([BASS_HZ, MIDDLE_HZ] as const).flatMap((toneHz) =>
    (['off', 'idle'] as const).map((engine) => ({ toneHz, engine, averageRatio })),
  );
  return yesIf(trials.some((moment) => harsh(bike, moment) && !harsh(bike.healthy(), moment)));
}

/** With the engine running one tone moves against another, or everything gets louder, or noise covers the bass. */
export function eqChanges(bike: Ridden): Complaint {
  const volts = (toneHz: number, engine: Moment['engine']) =>
    bike.fitted.map((corner) => Math.abs(signedV(bike, { toneHz, engine }, corner)));
  const moved = HZ.some((toneHz) => {
    const [off, running] = [volts(toneHz, 'off'), volts(toneHz, 'idle')];
    return off.some((before, i) => {
      const after = running[i] ?? 0;
      return before > 0 && (after / before > CHANGED_RATIO || before / after > CHANGED_RATIO);
    });
  });
  return yesIf(heardCorners(bike, bike.at({})).length > 0 && (moved || bike.world.maskedBassDb > MASKED_DB));
}

/** Music paused, engine off and running: something whines, ticks or whistles that a sound bike does not. */
export function whineOrTicking(bike: Ridden): Complaint {
  const noisy = (it: Ridden) =>
    (['off', 'cruise'] as const).some((engine) => {
      const { heard } = it.at({ toneHz: null, engine });
      return heard !== null && it.fitted.some((corner) => heard[corner].noisy);
    });
  return yesIf(noisy(bike) && !noisy(bike.healthy()));
}
