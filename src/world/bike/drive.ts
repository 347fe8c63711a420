import { voltageRatio } from '../../compute/decibel.ts';
import { highpass, magnitudeDb, peakingDb } from '../../compute/filter.ts';
import { FULL_STEP_V } from '../../compute/level.ts';
import { profileGainDb } from '../../compute/profile-response.ts';
import { type Axle, axleOf, type Corner, sideOf } from '../../rig/corner.ts';
import type { Moment } from '../moment.ts';
import type { Amp, World } from '../state.ts';

/** A bass setting and a bass knob are taken as a bell of Q 1 at 80 Hz, like the boost of the profile. An assumption. */
const bassDb = (gainDb: number, frequencyHz: number) => peakingDb({ frequencyHz, centreHz: 80, q: 1, gainDb });
/** Telephone sound: nothing below 300 Hz to speak of. From memory. */
const CALL_HIGHPASS_HZ = 300;
/** Q of a Butterworth filter, in decibels as `compute/filter.ts` counts it. */
const BUTTERWORTH_DB = 20 * Math.log10(Math.SQRT1_2);
const highpassDb = (cornerHz: number, frequencyHz: number) =>
  magnitudeDb({ coefficients: highpass({ cornerHz, qDb: BUTTERWORTH_DB }), frequencyHz });

/** What a control between two ends leaves of one of them: all up to the middle, nothing at the other end. */
const towards = (control: number, end: 1 | -1) => Math.min(1, Math.max(0, 1 + end * control));

/** Fader, balance and rear control: what they leave of a corner. */
export function levelRatio({ settings }: World, moment: Moment, corner: Corner): number {
  const fader = moment.fader ?? settings.fader;
  const balance = moment.balance ?? settings.balance;
  const rear = axleOf(corner) === 'rear';
  const rearControl = rear ? (moment.rearControlRatio ?? settings.rearControlRatio) : 1;
  return towards(fader, rear ? 1 : -1) * towards(balance, sideOf(corner) === 'right' ? 1 : -1) * rearControl;
}

const silent = ({ settings, unit }: World, moment: Moment) =>
  moment.toneHz === null || settings.paused || settings.muted || unit.mutedByLine || settings.target === 'headset';

/** The volts that an output of the head unit is asked for, before its supply limits it. */
export function unitWantedV(world: World, moment: Moment, corner: Corner): number {
  const { toneHz, engine, volumeRatio } = moment;
  const { unit, settings, phone } = world;
  if (toneHz === null || silent(world, moment) || unit.deadChannels.includes(corner)) return 0;
  if (axleOf(corner) === 'rear' && !unit.rearOn) return 0;
  const engineRunning = engine !== 'off';
  const gainDb =
    profileGainDb({ profile: unit.profile, frequencyHz: toneHz, engineRunning }) +
    bassDb(settings.bassDb + phone.bassDb, toneHz) +
    (engineRunning ? settings.speedVolumeDb : 0) +
    (phone.callMode ? highpassDb(CALL_HIGHPASS_HZ, toneHz) : 0);
  const ownRatio = unit.levelRatio[corner] * levelRatio(world, moment, corner);
  return FULL_STEP_V * volumeRatio * voltageRatio({ gainDb }) * ownRatio;
}

/** What an amplifier makes of a tone at its input, filters and bass knob included. */
export function ampGainRatio(
  { gainRatio, highpassHz, bassBoostDb }: Pick<Amp, 'gainRatio' | 'highpassHz' | 'bassBoostDb'>,
  axle: Axle,
  toneHz: number,
): number {
  const gainDb = (highpassHz === null ? 0 : highpassDb(highpassHz, toneHz)) + bassDb(bassBoostDb, toneHz);
  return gainRatio[axle] * voltageRatio({ gainDb });
}
