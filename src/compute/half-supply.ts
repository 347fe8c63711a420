import { requirePositive } from './require.ts';

/**
 * A bridge output rests both its wires at about half its supply. The band is common practice, no published source: the
 * two ends are from memory.
 */
export const HALF_SUPPLY_LOWEST_RATIO = 0.4;
export const HALF_SUPPLY_HIGHEST_RATIO = 0.55;

/**
 * How far the two wires of one healthy pair may lie apart. Common practice, no published source: from memory. What is
 * left between them is DC through the speaker.
 */
export const HALF_SUPPLY_PAIR_DIFFERENCE_V = 0.5;

/**
 * The DC volts a wire of a live bridge output shows against battery negative: 0.40 to 0.55 of the unit's own supply.
 *
 * Source: common practice, no published source.
 * Valid: for bridge outputs that are switched on. The volts prove that the output stage has power, and nothing about
 * whether the channel is enabled. An output with a capacitor or a transformer shows 0 V and may be healthy.
 * @throws {RangeError} if the supply is not finite and above 0.
 */
export function halfSupplyBandV({ supplyV }: { supplyV: number }): { lowV: number; highV: number } {
  requirePositive({ supplyV });
  return { lowV: HALF_SUPPLY_LOWEST_RATIO * supplyV, highV: HALF_SUPPLY_HIGHEST_RATIO * supplyV };
}
