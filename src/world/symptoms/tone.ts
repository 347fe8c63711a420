import { axleOf, type Corner, perCorner } from '../../rig/corner.ts';
import { TONES } from '../../sound/tone.ts';
import { coilsOhm } from '../hear.ts';
import type { Moment } from '../moment.ts';
import { driverOf } from '../valued-rig.ts';
import { type Complaint, heardCorners, type Ridden, ridden, yesIf } from './symptom.ts';

/* Limits are estimates: what ears call harsh, thin or changed has no published limit on a motorcycle. */

/** Overdrive from which a tone is heard as harsh: 1 dB is a distortion of 5 %. */
export const HARSH_DB = 1;
/** A share by which a tone, over another, has to move before an ear takes note. */
const CHANGED_RATIO = 1.2;
const MASKED_DB = 5;
/** Bass missing by so much is called thin. */
const THIN_DB = 4;
/**
 * A speaker is rated with its bass cut off under some 80 Hz. There its way grows fourfold with each octave down, and at this
 * share of its watts it is at the end of it. An estimate.
 */
const TRAVELS_RATIO = 0.6;
/** A gap or a loose frame of so much is heard to buzz, from this power on. Both are estimates. */
const LOOSE_LEAK_DB = 6;
const HEARD_LOUD_W = 0.5;

export const BASS_HZ = 80;
export const MIDDLE_HZ = 400;
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

/** Speakers push against each other: all of them play, and their bass is thinner than with every wire the right way round. */
export function bassCancels(bike: Ridden): Complaint {
  const { heard } = bike.at({});
  if (!heard || bike.fitted.some((corner) => !heard[corner].plays)) return 'no';
  const runs = perCorner((corner) => ({ ...bike.world.runs[corner], reversed: false }));
  return yesIf(bassDb(bike, 'off') < bassDb(ridden({ ...bike.world, runs }), 'off') - THIN_DB);
}

/** What is ugly about a corner at a moment. */
export type Ugly = 'cut off' | 'travels too far' | 'scrapes' | 'rattles';

/** Which corners sound ugly, and how, and which an amplifier that falls out takes along. */
export interface Ugliness {
  readonly chops: readonly Corner[];
  readonly corners: Readonly<Partial<Record<Corner, readonly Ugly[]>>>;
}

/** What is heard of a bike at a moment that is meant to be loud. Null where nothing can play at all. */
export function ugliness(bike: Ridden, moment: Partial<Moment>): Ugliness | null {
  const { now, heard, moment: at } = bike.at(moment);
  if (!now.ok || !heard) return null;
  const isBass = at.toneHz !== null && at.toneHz <= BASS_HZ;
  const rattles = (corner: Corner, leakDb: number) =>
    leakDb >= LOOSE_LEAK_DB || bike.world.trimRattles.includes(axleOf(corner));
  const uglyAt = (corner: Corner): readonly Ugly[] => {
    const { overdriveDb, scrapes, leakDb, powerW } = heard[corner];
    const { ratedW, gives } = bike.world.speakers[corner];
    return [
      ...(overdriveDb > HARSH_DB || (gives === 'rough sound' && powerW > HEARD_LOUD_W) ? (['cut off'] as const) : []),
      ...(isBass && powerW > TRAVELS_RATIO * at.averageRatio * ratedW ? (['travels too far'] as const) : []),
      ...(scrapes === 'always' || (scrapes === 'far' && isBass && powerW > HEARD_LOUD_W) ? (['scrapes'] as const) : []),
      ...(isBass && rattles(corner, leakDb) && powerW > HEARD_LOUD_W ? (['rattles'] as const) : []),
    ];
  };
  const corners = bike.fitted.map((corner) => [corner, uglyAt(corner)] as const).filter(([, how]) => how.length > 0);
  return {
    chops: bike.fitted.filter((corner) => {
      const driver = driverOf(bike.world.rig, corner);
      const why = driver === 'unit' ? null : now.amps[driver]?.why;
      return why === 'undervoltage' || why === 'load';
    }),
    corners: Object.fromEntries(corners),
  };
}

/** Where it is ugly at a moment; everywhere, where nothing plays at all. An amplifier that falls out takes all its speakers along. */
export function uglyCorners(bike: Ridden, moment: Partial<Moment>): readonly Corner[] {
  const heard = ugliness(bike, moment);
  return heard ? bike.fitted.filter((corner) => heard.chops.includes(corner) || heard.corners[corner]) : bike.fitted;
}

/** A bass note and a voice, engine off and idling. A bass beat draws what a full sine draws, for as long as it lasts. */
export const LOUD_TRIALS: readonly Partial<Moment>[] = (['off', 'idle'] as const).flatMap((engine) =>
  [BASS_HZ, MIDDLE_HZ].map((toneHz) => ({ toneHz, engine, averageRatio: 1 })),
);

/** The loudest step that its rider uses. */
export const atTop = ({ world }: Ridden, trial: Partial<Moment>): Partial<Moment> => ({
  ...trial,
  volumeRatio: world.settings.topVolumeRatio,
});

/** Of two amplifiers nobody means the one whose speakers are clean. */
function isOfTheMeantAmp({ world: { rig, about } }: Ridden, ugly: readonly Corner[]): boolean {
  const drivers = ugly.map((corner) => driverOf(rig, corner)).filter((driver) => driver !== 'unit');
  return about === null || drivers.length === 0 || drivers.includes(about);
}

/** At the loudest step its rider uses, something is cut off, scrapes, or falls away under load; that of a sound bike is clean. */
export const distortionAtVolume = (bike: Ridden): Complaint =>
  yesIf(
    LOUD_TRIALS.some((trial) => {
      const uglyOn = (it: Ridden) => uglyCorners(it, atTop(it, trial));
      const ugly = uglyOn(bike);
      return ugly.length > 0 && isOfTheMeantAmp(bike, ugly) && uglyOn(bike.healthy()).length === 0;
    }),
  );

/** Over what it was with the engine off, how loud each tone is at idle: of the corner where it moved most. */
export function engineMoves(bike: Ridden): readonly { readonly toneHz: number; readonly ratio: number }[] {
  const volts = (toneHz: number, engine: Moment['engine']) =>
    bike.fitted.map((corner) => Math.abs(signedV(bike, { toneHz, engine }, corner)));
  return HZ.map((toneHz) => {
    const [off, running] = [volts(toneHz, 'off'), volts(toneHz, 'idle')];
    const ratios = off.flatMap((before, i) => (before > 0 ? [(running[i] ?? 0) / before] : []));
    const far = (ratio: number) => Math.abs(Math.log(Math.max(ratio, 1e-6)));
    return { toneHz, ratio: ratios.toSorted((a, b) => far(b) - far(a))[0] ?? 1 };
  });
}
export const isMoved = (ratio: number): boolean => ratio > CHANGED_RATIO || ratio < 1 / CHANGED_RATIO;
export const isMasked = ({ world }: Ridden): boolean => world.maskedBassDb > MASKED_DB;

/** Whether something whines or ticks with the music paused. */
const isNoisy = (bike: Ridden, engine: Moment['engine']): boolean => {
  const { heard } = bike.at({ toneHz: null, engine });
  return heard !== null && bike.fitted.some((corner) => heard[corner].noisy);
};
/** Whether a noise comes with the engine. */
export const noiseComes = (bike: Ridden): boolean => isNoisy(bike, 'idle') && !isNoisy(bike, 'off');

/** Whether it is ugly at the loudest step, with the engine as it is. */
export const isUglyAtTop = (bike: Ridden, engine: Moment['engine']): boolean =>
  [BASS_HZ, MIDDLE_HZ].some((toneHz) => uglyCorners(bike, atTop(bike, { toneHz, engine, averageRatio: 1 })).length > 0);

/** Whether it is ugly at the loudest step with the engine off, and clean as soon as it runs. */
export const clearsRunning = (bike: Ridden): boolean => isUglyAtTop(bike, 'off') && !isUglyAtTop(bike, 'idle');

/** Whether it is ugly at the loudest step at idle, and clean with the revs up: more is drawn at idle than is made there. */
export const sagsAtIdle = (bike: Ridden): boolean => isUglyAtTop(bike, 'idle') && !isUglyAtTop(bike, 'cruise');

/**
 * With the engine running one tone moves against another, or everything gets louder, or noise covers the bass, or comes
 * along; or what was ugly when it was loud is clean, as soon as it runs or with its revs up.
 */
export function eqChanges(bike: Ridden): Complaint {
  if (heardCorners(bike, bike.at({})).length === 0) return 'no';
  const sound = bike.healthy();
  return yesIf(
    engineMoves(bike).some(({ ratio }) => isMoved(ratio)) ||
      isMasked(bike) ||
      (noiseComes(bike) && !noiseComes(sound)) ||
      (clearsRunning(bike) && !clearsRunning(sound)) ||
      (sagsAtIdle(bike) && !sagsAtIdle(sound)),
  );
}

/** Music paused, engine off and running: something whines, ticks or whistles that a sound bike does not. */
export function whineOrTicking(bike: Ridden): Complaint {
  const noisy = (it: Ridden) => (['off', 'cruise'] as const).some((engine) => isNoisy(it, engine));
  return yesIf(noisy(bike) && !noisy(bike.healthy()));
}
