import { requireNotNegative, requirePositive } from './require.ts';

/**
 * What a bridge output loses of its supply into a speaker, in volts. Common practice, no published source: the value is
 * from memory, for factory units into 4 ohm; a heavier load loses more.
 */
export const BRIDGE_LOSS_LOADED_V = 2.2;

/**
 * The same into an amplifier's input, which takes almost no current. Common practice, no published source: the value is
 * from memory.
 */
export const BRIDGE_LOSS_UNLOADED_V = 0.8;

/**
 * Volts of the loudest step of a flat, full output, whatever the supply: 14.2 V less 2.2 V, over √2. A supply below that
 * cuts it off. Common practice, no published source: 18 W into 4 Ω, from memory.
 */
export const FULL_STEP_V = (14.2 - BRIDGE_LOSS_LOADED_V) / Math.SQRT2;

/**
 * Volts across a load that takes a given power: U = √(P Z).
 *
 * Source: Joule's law; Lessons In Electric Circuits, DC vol., "Calculating electric power".
 * Valid: any load that is a plain resistance. A speaker is not: its impedance moves with frequency, and the rated ohms
 * give the volts at which it was rated, not the watts it takes at each tone.
 * Assumes RMS volts and average watts.
 * @throws {RangeError} if the power is negative, the load is not above 0, or either is not finite.
 */
export function levelV({ powerW, loadOhm }: { powerW: number; loadOhm: number }): number {
  requireNotNegative({ powerW });
  requirePositive({ loadOhm });
  return Math.sqrt(powerW * loadOhm);
}

/**
 * Power in a load under a given RMS voltage: P = U² / Z. The inverse of `levelV`, with the same source and limits.
 *
 * @throws {RangeError} if the volts are negative, the load is not above 0, or either is not finite.
 */
export function powerW({ levelV, loadOhm }: { levelV: number; loadOhm: number }): number {
  requireNotNegative({ levelV });
  requirePositive({ loadOhm });
  return levelV ** 2 / loadOhm;
}

/**
 * The highest unclipped sine a bridge output gives, in RMS volts across its two wires: U = (supply − loss) / √2.
 *
 * Source: the ideal limit, peak across the load = supply, is the bridge-tied load of any amplifier text; that a fixed
 * voltage is lost on top is common practice, no published source.
 * Valid: where the supply limits the output. An output whose level is set lower never reaches it; one that feeds a load
 * below its rating loses more than `BRIDGE_LOSS_LOADED_V`, so the true figure is lower.
 * @throws {RangeError} if the loss is negative or not below the supply, or if either is not finite.
 */
export function cleanOutputV({ supplyV, lossV }: { supplyV: number; lossV: number }): number {
  requirePositive({ supplyV });
  requireNotNegative({ lossV });
  if (lossV >= supplyV) throw new RangeError(`lossV must be below supplyV (${supplyV}), got ${lossV}`);
  return (supplyV - lossV) / Math.SQRT2;
}
