import { powerRatio, voltageRatio } from './decibel.ts';
import { requireFinite, requirePositive } from './require.ts';

/**
 * The volts of an unboosted tone at which the boosted bass beside it, from an equally loud file, starts to clip:
 * clean volts / 10^(boost / 20). A cut (negative boost) clips no earlier than the rest: the result is then `cleanV`.
 *
 * Source: the definition of the decibel, Lessons In Electric Circuits, Semiconductors vol., "Decibels".
 * Valid: for one boosted tone at a time. Music puts bass on top of the rest, so it clips earlier.
 * @throws {RangeError} if the clean volts are not finite and above 0, or the boost is not finite.
 */
export function boostClipsAtV({ cleanV, boostDb }: { cleanV: number; boostDb: number }): number {
  requirePositive({ cleanV });
  return cleanV / voltageRatio({ gainDb: headroomLostDb({ boostDb }) });
}

/**
 * By how much a boost lowers the loudest clean level of everything that is not boosted: the boost itself, or 0 for a
 * cut. Source and validity: as `boostClipsAtV`.
 *
 * @throws {RangeError} if the boost is not finite.
 */
export function headroomLostDb({ boostDb }: { boostDb: number }): number {
  requireFinite({ boostDb });
  return Math.max(0, boostDb);
}

/**
 * How many times the power of an unboosted tone the boosted one takes: 10^(boost / 10). Source: as `boostClipsAtV`.
 * Valid: below clipping, into the same load.
 *
 * @throws {RangeError} if the boost is not finite.
 */
export function boostPowerRatio({ boostDb }: { boostDb: number }): number {
  requireFinite({ boostDb });
  return powerRatio({ gainDb: boostDb });
}
