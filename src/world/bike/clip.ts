import { averageReadingRatio, clippedSine } from '../../compute/clipping.ts';
import { gainFromVoltageRatioDb } from '../../compute/decibel.ts';
import { BRIDGE_LOSS_LOADED_V, BRIDGE_LOSS_UNLOADED_V, cleanOutputV } from '../../compute/level.ts';

/** The load that the loaded loss of `compute/level.ts` belongs to. */
const LOSS_MEANT_AT_OHM = 4;
const MOST_OVERDRIVE_DB = 100;

/**
 * The loudest clean sine of a bridge output into a load: the formula of `compute/level.ts`, with a loss between its two
 * figures. What the load adds to the loss is in proportion to its conductance: nothing when there is none, all of it at
 * 4 Ω, more at 2 Ω. That proportion is an assumption; both ends are common practice, no published source.
 */
export function cleanIntoV({ supplyV, loadOhm }: { supplyV: number; loadOhm: number }): number {
  const addedV = (BRIDGE_LOSS_LOADED_V - BRIDGE_LOSS_UNLOADED_V) * (LOSS_MEANT_AT_OHM / loadOhm);
  const lossV = BRIDGE_LOSS_UNLOADED_V + addedV;
  return lossV < supplyV ? cleanOutputV({ supplyV, lossV }) : 0;
}

/** A tone, perhaps cut off: its volts as RMS of the uncut part of the wave, and how far it was overdriven. */
export interface Wave {
  readonly cleanV: number;
  readonly overdriveDb: number;
}

/** A sine of these volts out of a stage that gives no more than `limitV` of clean sine. */
export function clip(wantedV: number, limitV: number): Wave {
  if (wantedV <= limitV) return { cleanV: wantedV, overdriveDb: 0 };
  if (limitV <= 0) return { cleanV: 0, overdriveDb: MOST_OVERDRIVE_DB };
  const overdriveDb = Math.min(MOST_OVERDRIVE_DB, gainFromVoltageRatioDb({ voltageRatio: wantedV / limitV }));
  return { cleanV: limitV, overdriveDb };
}

/** What a wave reads over its `cleanV`: on an average-reading meter, and as true RMS. Both are 1 for a clean sine. */
export const shownRatio = ({ overdriveDb }: Pick<Wave, 'overdriveDb'>, reads: 'average' | 'rms'): number =>
  overdriveDb === 0
    ? 1
    : Math.SQRT2 * (reads === 'average' ? averageReadingRatio({ overdriveDb }) : clippedSine({ overdriveDb }).rmsRatio);
