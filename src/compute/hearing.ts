import { requireFinite, requireNotNegative, requirePositive } from './require.ts';

/** The level that may be heard for a working day, and by how much more halves the time. Source: NIOSH 98-126. */
export const DAY_LEVEL_DBA = 85;
export const DAY_S = 8 * 3600;
export const EXCHANGE_DB = 3;

/**
 * How long a level may be heard in a day: 8 h / 2^((L − 85) / 3).
 *
 * Source: NIOSH 98-126, the formula of table 1-1. Valid: A-weighted level at the ear, the whole day's sound counted; a
 * limit of risk at work, not a promise: some ears are hurt earlier. Below 80 dBA it is not used there.
 * @throws {RangeError} if the level is not finite.
 */
export function allowedTimeS({ levelDba }: { levelDba: number }): number {
  requireFinite({ levelDba });
  return DAY_S / 2 ** ((levelDba - DAY_LEVEL_DBA) / EXCHANGE_DB);
}

/**
 * The share of a day's sound that some time at a level takes up; 1 is all of it. Source, validity: as `allowedTimeS`.
 *
 * @throws {RangeError} if the time is negative or not finite, or the level is not finite.
 */
export function doseRatio({ levelDba, timeS }: { levelDba: number; timeS: number }): number {
  requireNotNegative({ timeS });
  return timeS / allowedTimeS({ levelDba });
}

/**
 * Levels of sounds that have nothing to do with each other, heard together: 10 log10 Σ 10^(L / 10).
 *
 * Source: the sum of powers; Lessons In Electric Circuits, Semiconductors vol., "Decibels".
 * @throws {RangeError} if there is none, or one is not finite.
 */
export function summedLevelDb(levelsDb: readonly number[]): number {
  if (levelsDb.length === 0) throw new RangeError('levelsDb must name at least one level, got none');
  for (const levelDb of levelsDb) requireFinite({ levelDb });
  return 10 * Math.log10(levelsDb.reduce((sum, levelDb) => sum + 10 ** (levelDb / 10), 0));
}

const MPH_TO_M_S = 0.44704;
const WIND_AT_40_MPH_DBA = 90;
const WIND_AT_100_MPH_DBA = 112;
/** Below this the wind is not the loudest. */
export const WIND_FROM_M_S = 40 * MPH_TO_M_S;
/** Helmets, screens and riders differ by that much, to either side. */
export const WIND_SPREAD_DB = 3;

/**
 * The wind's level at the ear under a helmet: 90 dBA at 40 mph, 112 at 100, a straight line over the logarithm of speed.
 *
 * Source: Binnington, McCombe, Harris, Br. J. Audiol. 27(6), 1993, abstract. Valid: from 40 to 100 mph in clean air; in
 * the swirl behind a screen it can be louder, behind a still one quieter. ± 3 dB.
 * @throws {RangeError} if the speed is not finite and above 0.
 */
export function windLevelDba({ speedMS }: { speedMS: number }): number {
  requirePositive({ speedMS });
  const perDecadeDb = (WIND_AT_100_MPH_DBA - WIND_AT_40_MPH_DBA) / Math.log10(100 / 40);
  return WIND_AT_40_MPH_DBA + perDecadeDb * Math.log10(speedMS / WIND_FROM_M_S);
}
