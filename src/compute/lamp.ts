import { requireNotNegative, requirePositive } from './require.ts';

/**
 * How the current of a glowing filament follows its volts. Source: lamp rerating, Standard Handbook for Electrical
 * Engineers (Fink and Beaty), section 22: current ∝ volts^0.55. A vacuum lamp has a little more.
 */
export const FILAMENT_EXPONENT_RATIO = 0.55;

/**
 * Ohms of a cold filament over those at its rated volts. Source: tungsten has 5.65 µΩ cm at 300 K and 84.7 at 2800 K
 * (Jones and Langmuir, "The characteristics of tungsten filaments as functions of temperature", 1927, from memory).
 */
export const FILAMENT_COLD_RATIO = 5.65 / 84.7;

interface LitLamp {
  readonly lampV: number;
  /** What it draws at the volts that it is rated for. */
  readonly ratedV: number;
  readonly ratedA: number;
}

function requireLamp({ lampV, ratedV, ratedA }: LitLamp): void {
  requireNotNegative({ lampV });
  requirePositive({ ratedV, ratedA });
}

/**
 * The current of a filament lamp that has settled at some volts: I = rated I × (U / rated U)^0.55. A dim filament is
 * cooler and has fewer ohms, so it draws more than its rated ohms say. They never fall below those of the cold filament,
 * which the law meets at a few hundredths of a volt for a 12 V lamp.
 *
 * Source: `FILAMENT_EXPONENT_RATIO`. Valid: within a tenth of the current from a fifth of the rated volts up, within a
 * sixth from a tenth up. Below that the filament is dark, and what is in between is only known to be no more.
 * @throws {RangeError} if the volts are negative, a rating is not above 0, or a value is not finite.
 */
export function lampA(lamp: LitLamp): number {
  requireLamp(lamp);
  const { lampV, ratedV, ratedA } = lamp;
  const ratio = lampV / ratedV;
  return ratedA * Math.min(ratio / FILAMENT_COLD_RATIO, ratio ** FILAMENT_EXPONENT_RATIO);
}

/**
 * Amperes that a lamp takes more for each volt more, as long as it has time to settle: the slope of `lampA`, which is
 * 0.55 × I / U while it glows, and one over its ohms when it is cold.
 * @throws {RangeError} as `lampA`.
 */
export function lampSlopeS(lamp: LitLamp): number {
  const currentA = lampA(lamp);
  const { lampV, ratedV, ratedA } = lamp;
  const coldS = ratedA / (ratedV * FILAMENT_COLD_RATIO);
  return lampV === 0 || currentA >= coldS * lampV ? coldS : (FILAMENT_EXPONENT_RATIO * currentA) / lampV;
}
