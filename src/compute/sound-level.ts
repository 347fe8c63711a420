import { gainFromPowerRatioDb, gainFromVoltageRatioDb } from './decibel.ts';
import { requireFinite, requirePositive } from './require.ts';

/** The pressure that 0 dB stands for. Source: ISO 1683. */
export const REFERENCE_PA = 20e-6;
/** Air at about 20 °C. At 30 °C the level of a cone is 0.3 dB lower, which is less than a sensitivity is known to. */
export const AIR_KG_M3 = 1.2;

/**
 * The level that a speaker makes at 1 m from a power: sensitivity + 10 log10(P / 1 W).
 *
 * Source: the definition of sensitivity, dB at 1 m from 1 W, IEC 60268-5. Valid: in its working range and below the
 * power at which its coil gets hot: a hot coil gives some decibels less.
 * @throws {RangeError} if the power is not finite and above 0, or the sensitivity is not finite.
 */
export function levelAtPowerDb({ sensitivityDb, powerW }: { sensitivityDb: number; powerW: number }): number {
  requireFinite({ sensitivityDb });
  return sensitivityDb + gainFromPowerRatioDb({ powerRatio: powerW });
}

type Cone = { coneM2: number; excursionM: number };

/**
 * The highest level at 1 m that a cone reaches at one frequency before it runs out of way: p = √2 π ρ f² S x.
 *
 * Source: a small source in a baffle, p = ρ f U / r with U the volume velocity; Kinsler et al., Fundamentals of
 * Acoustics, from memory. Valid: closed box or panel, all sound on one side; the cone smaller than a third of the
 * wavelength; `excursionM` is the way from rest to one side. On a free edge with sound on both sides it is less.
 * @throws {RangeError} if a value is not finite and above 0.
 */
export function coneLevelDb({ coneM2, excursionM, frequencyHz }: Cone & { frequencyHz: number }): number {
  requirePositive({ coneM2, excursionM, frequencyHz });
  const pressurePa = Math.SQRT2 * Math.PI * AIR_KG_M3 * frequencyHz ** 2 * coneM2 * excursionM;
  return gainFromVoltageRatioDb({ voltageRatio: pressurePa / REFERENCE_PA });
}

/**
 * The frequency below which a cone cannot follow a level any more: where `coneLevelDb` equals it. A high-pass filter
 * belongs there or above. The way grows with the square of the falling frequency.
 *
 * Source and validity: as `coneLevelDb`.
 * @throws {RangeError} if area or excursion is not finite and above 0, or the level is not finite.
 */
export function lowestFrequencyHz({ coneM2, excursionM, levelDb }: Cone & { levelDb: number }): number {
  requireFinite({ levelDb });
  return 10 ** ((levelDb - coneLevelDb({ coneM2, excursionM, frequencyHz: 1 })) / 40);
}
