import { voltageRatio } from './decibel.ts';
import { peakingDb } from './filter.ts';
import { requireFinite } from './require.ts';

/** What an output profile does to the sound: a level, a bass bell, and a second bell only while the engine runs. */
export type ProfileShape = {
  levelDb: number;
  boostDb: number;
  boostCentreHz: number;
  boostQ: number;
  engineDifference: { gainDb: number; centreHz: number; q: number } | null;
};

/*
 * The three shapes are common practice with no published source: a boost of 12 to 14 dB near 80 Hz and a level 7 dB
 * lower for a unit that feeds an amplifier. The Q of the boost is an assumption. So is the whole engine difference:
 * that the tone changes is known, which way it moves is not. It is put where an 80 and 400 Hz pair can see it.
 */
const ENGINE_DIFFERENCE_ASSUMED = { gainDb: 3, centreHz: 80, q: 1 } as const;

/** As delivered: full level for speakers, boosted bass, another tone while the engine runs. */
export const UNALTERED_SHAPE: ProfileShape = {
  levelDb: 0,
  boostDb: 13,
  boostCentreHz: 80,
  boostQ: 1,
  engineDifference: ENGINE_DIFFERENCE_ASSUMED,
};

/** For an amplifier: lower level, flat, and the same tone whether the engine runs or not. */
export const AMPLIFIED_SAME_SHAPE: ProfileShape = {
  ...UNALTERED_SHAPE,
  levelDb: -7,
  boostDb: 0,
  engineDifference: null,
};

/** For an amplifier: lower level, flat, but another tone while the engine runs. */
export const AMPLIFIED_CHANGES_SHAPE: ProfileShape = {
  ...AMPLIFIED_SAME_SHAPE,
  engineDifference: ENGINE_DIFFERENCE_ASSUMED,
};

type Shaped = { profile: ProfileShape; engineRunning: boolean };

/**
 * The gain of a profile at one frequency: its level plus its bells, in decibels against an unshaped full-level output.
 *
 * Source: the bells are the peaking filter of the W3C Web Audio API; that they describe a head unit is an assumption,
 * common practice with no published source.
 * Valid: below clipping, with the tone settings flat. Above it the true gain is smaller, first in the bass.
 * @throws {RangeError} if the frequency is not above 0 and below 24 kHz, or a value of the profile is out of range.
 */
export function profileGainDb({ profile, frequencyHz, engineRunning }: Shaped & { frequencyHz: number }): number {
  const { levelDb, boostDb, boostCentreHz, boostQ, engineDifference } = profile;
  requireFinite({ levelDb });
  const boost = peakingDb({ frequencyHz, centreHz: boostCentreHz, q: boostQ, gainDb: boostDb });
  const engine = engineRunning && engineDifference ? peakingDb({ frequencyHz, ...engineDifference }) : 0;
  return levelDb + boost + engine;
}

/**
 * Volts at one tone over volts at another, both files at equal level: what two meter readings divide to.
 *
 * Source, validity: as `profileGainDb`. The level of the profile cancels.
 * @throws {RangeError} as `profileGainDb`.
 */
export function toneRatio({
  toneHz,
  referenceHz,
  ...shaped
}: Shaped & { toneHz: number; referenceHz: number }): number {
  const gainDb =
    profileGainDb({ ...shaped, frequencyHz: toneHz }) - profileGainDb({ ...shaped, frequencyHz: referenceHz });
  return voltageRatio({ gainDb });
}
