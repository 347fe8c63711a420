import { requireNotNegative, requirePositive } from './require.ts';

/* What an amplifier needs to come on. All thresholds: from memory of the trade, no published source. */

/** An amplifier goes off below this at its own terminals: the least and the most that makers choose. */
export const UNDERVOLTAGE_CUT_LOWEST_V = 9;
export const UNDERVOLTAGE_CUT_HIGHEST_V = 10.5;
/** It goes off above this, to save itself. */
export const OVERVOLTAGE_CUT_LOWEST_V = 16;
export const OVERVOLTAGE_CUT_HIGHEST_V = 18;

/** Battery posts with the key on and the engine off: nearly empty below the first, healthy from the second on. */
export const KEY_ON_FLAT_V = 11.8;
export const KEY_ON_HEALTHY_V = 12.2;
/** The same at about 3000 rpm with the lamps on: the least and the most of a healthy regulator, and what none goes above. */
export const CHARGING_HEALTHY_LOWEST_V = 13.8;
export const CHARGING_HEALTHY_HIGHEST_V = 14.7;
export const CHARGING_MOST_V = 15;
/** Below this nothing flows into a lead-acid battery that is full: it floats there. Common practice, no published source. */
export const CHARGING_LEAST_V = 13.2;

/** A remote terminal switches on somewhere between these. Below the third nothing feeds it. */
export const REMOTE_ON_LOWEST_V = 7;
export const REMOTE_ON_HIGHEST_V = 9;
export const REMOTE_NOTHING_BELOW_V = 3;
/** What a healthy remote wire may lose between the battery and the terminal. */
export const REMOTE_LOSS_V = 1;

/** An amplifier that senses sound wakes somewhere between these, by its own papers. */
export const SENSE_LOWEST_V = 0.05;
export const SENSE_HIGHEST_V = 1;
/** One that senses half the supply wakes above this on one input wire: the least and the most. */
export const SENSE_DC_LOWEST_V = 3;
export const SENSE_DC_HIGHEST_V = 5;

/** DC across a healthy output, and from where on the amplifier is to be suspected. */
export const OUTPUT_DC_HEALTHY_V = 0.05;
export const OUTPUT_DC_BAD_V = 0.3;

type Feed = { supplyV: number; cutV: number };

/**
 * The resistance of positive and ground path together at which an amplifier falls to its cut-out: R = (supply − cut) / I.
 *
 * Source: Ohm's law. Valid: steady current; the battery is taken to hold its volts, so a tired one cuts out sooner.
 * @throws {RangeError} if a value is not finite and above 0, or the cut-out is not below the supply.
 */
export function cutOutOhm({ supplyV, cutV, currentA }: Feed & { currentA: number }): number {
  requirePositive({ supplyV, cutV, currentA });
  return aboveCutV({ supplyV, cutV }) / currentA;
}

/**
 * The current at which a path of a given resistance pulls the amplifier down to its cut-out: I = (supply − cut) / R.
 * The inverse of `cutOutOhm`, with the same source and limits.
 *
 * @throws {RangeError} as `cutOutOhm`, with the resistance in place of the current.
 */
export function cutOutA({ supplyV, cutV, resistanceOhm }: Feed & { resistanceOhm: number }): number {
  requirePositive({ supplyV, cutV, resistanceOhm });
  return aboveCutV({ supplyV, cutV }) / resistanceOhm;
}

function aboveCutV({ supplyV, cutV }: Feed): number {
  if (cutV >= supplyV) throw new RangeError(`cutV must be below supplyV (${supplyV}), got ${cutV}`);
  return supplyV - cutV;
}

/**
 * What a supply of a given inner resistance shows under load: U = E − I R.
 *
 * Source: Lessons In Electric Circuits, DC vol., "Practical considerations – batteries".
 * Valid: for the moment of the load. A battery that is nearly empty goes on falling.
 * @throws {RangeError} if a value is negative or not finite.
 */
export function sagV({
  openV,
  internalOhm,
  currentA,
}: {
  openV: number;
  internalOhm: number;
  currentA: number;
}): number {
  requireNotNegative({ openV, internalOhm, currentA });
  return Math.max(0, openV - internalOhm * currentA);
}
