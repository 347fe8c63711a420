import { requireNotNegative, requirePositive } from './require.ts';

/**
 * How the current of a glowing filament follows its volts. Source: lamp rerating, Standard Handbook for Electrical
 * Engineers (Fink and Beaty), section 22: current ∝ volts^0.55. A vacuum lamp has a little more.
 */
export const FILAMENT_EXPONENT_RATIO = 0.55;

/**
 * The current of a filament lamp away from its rating: I = rated I × (U / rated U)^0.55. A dim filament is cooler and has
 * fewer ohms, so it draws more than its rated ohms say.
 *
 * Source: `FILAMENT_EXPONENT_RATIO`. Valid: within a tenth of the current from a fifth of the rated volts up, within a
 * sixth from a tenth up. Below that the filament is dark, and the law, which ends at no ohms at all, does not hold.
 * @throws {RangeError} if the volts are negative, a rating is not above 0, or a value is not finite.
 */
export function lampA({ lampV, ratedV, ratedA }: { lampV: number; ratedV: number; ratedA: number }): number {
  requireNotNegative({ lampV });
  requirePositive({ ratedV, ratedA });
  return ratedA * (lampV / ratedV) ** FILAMENT_EXPONENT_RATIO;
}
