import { requireFinite, requirePositive } from './require.ts';

/*
 * Source of this file: Lessons In Electric Circuits, Semiconductors vol., "Decibels".
 * Valid: the voltage forms equal the power forms only where both voltages stand across the same resistance; across
 * different ones, a voltage gain in decibels says nothing about power.
 */

/**
 * Voltage ratio of a gain: 10^(gain / 20).
 *
 * @throws {RangeError} if the gain is not finite.
 */
export function voltageRatio({ gainDb }: { gainDb: number }): number {
  requireFinite({ gainDb });
  return 10 ** (gainDb / 20);
}

/**
 * Power ratio of a gain: 10^(gain / 10).
 *
 * @throws {RangeError} if the gain is not finite.
 */
export function powerRatio({ gainDb }: { gainDb: number }): number {
  requireFinite({ gainDb });
  return 10 ** (gainDb / 10);
}

/**
 * Gain of a voltage ratio: 20 log10(ratio). The inverse of `voltageRatio`.
 *
 * @throws {RangeError} if the ratio is not finite and above 0: silence has no decibels.
 */
export function gainFromVoltageRatioDb({ voltageRatio }: { voltageRatio: number }): number {
  requirePositive({ voltageRatio });
  return 20 * Math.log10(voltageRatio);
}

/**
 * Gain of a power ratio: 10 log10(ratio). The inverse of `powerRatio`.
 *
 * @throws {RangeError} if the ratio is not finite and above 0: no power has no decibels.
 */
export function gainFromPowerRatioDb({ powerRatio }: { powerRatio: number }): number {
  requirePositive({ powerRatio });
  return 10 * Math.log10(powerRatio);
}

/** The volts of 0 dBu: 1 mW into 600 ohm. Source: the same chapter, "Absolute dB scales". */
export const DBU_REFERENCE_V = Math.sqrt(0.6);

/**
 * A level against 1 V: 20 log10(U / 1 V), in dBV.
 *
 * @throws {RangeError} if the volts are not finite and above 0: silence has no decibels.
 */
export function levelDbv({ levelV }: { levelV: number }): number {
  requirePositive({ levelV });
  return 20 * Math.log10(levelV);
}

/**
 * A level against 0.775 V: 20 log10(U / 0.775 V), in dBu.
 *
 * @throws {RangeError} as `levelDbv`.
 */
export const levelDbu = ({ levelV }: { levelV: number }): number =>
  levelDbv({ levelV }) - levelDbv({ levelV: DBU_REFERENCE_V });
