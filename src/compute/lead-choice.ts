import { FUSE_RATINGS_A, LARGEST_FUSE_BY_GAUGE_A, largestFuseA } from './fuse.ts';
import { requireNotNegative, requirePositive } from './require.ts';
import { awgSectionM2, sectionForDropM2 } from './wire.ts';

/**
 * What full bass may lose on the copper of a positive lead. Common practice, no published source; with some milliohms of
 * fuse and lugs the whole way then loses about twice that on an amplifier that draws all of it.
 */
export const PLUS_LEAD_MOST_V = 0.25;

/** Soft cable has so much more resistance than solid copper of its section. Source: the limits of IEC 60228, class 5. */
export const FINE_STRANDS_RATIO = 1.16;

/** The gauges that leads are sold in, thinnest first, from 18 to 4/0 (−3). */
const GAUGES_SOLD = [18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3];
const METRIC_SOLD_MM2 = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240, 300, 400];

/** Tables of gauges name three digits, and so does whoever reads a lead: 8.37 mm² for 8.366. */
const asPrintedMm2 = (gauge: number): number => Number((awgSectionM2(gauge) / 1e-6).toPrecision(3));

const MM2 = 1e-6;
/** A section that was typed in mm² and one of the series may differ by rounding. */
const ROUNDING_RATIO = 1 - 1e-9;

/** Copper sections as leads are sold, thinnest first. Source: ASTM B258 for gauges, IEC 60228 for metric sections. */
export const SECTIONS_SOLD_M2: readonly number[] = [...GAUGES_SOLD.map(asPrintedMm2), ...METRIC_SOLD_MM2]
  .toSorted((a, b) => a - b)
  .map((mm2) => mm2 * MM2);

const LARGEST_TABLED_A = Math.max(...LARGEST_FUSE_BY_GAUGE_A.values());

/**
 * The smallest fuse sold that carries a current for good: the first rating that is not below it.
 *
 * Source: a blade fuse carries 110 % of its rating for 100 h (ISO 8820-3, from memory), so it carries its rating.
 * Valid: to 300 A. A larger current still gets 300 A, where the table of leads ends: at music, which averages a third of
 * full bass at most, such a fuse carries an amplifier of 900 A at full bass.
 * @throws {RangeError} if the current is not finite and above 0.
 */
export function fuseNeededA({ currentA }: { currentA: number }): number {
  requirePositive({ currentA });
  return FUSE_RATINGS_A.find((ratedA) => ratedA >= currentA) ?? LARGEST_TABLED_A;
}

/**
 * The thinnest copper section sold that a fuse of this rating still protects.
 *
 * Source: `LARGEST_FUSE_BY_GAUGE_A`, turned round. Valid: as `largestFuseA`.
 * @throws {RangeError} if the fuse is not finite and above 0, or above 300 A, for which the table has no lead.
 */
export function sectionForFuseM2({ fuseA }: { fuseA: number }): number {
  requirePositive({ fuseA });
  const gauge = GAUGES_SOLD.find((sold) => (LARGEST_FUSE_BY_GAUGE_A.get(sold) ?? 0) >= fuseA);
  if (gauge === undefined) throw new RangeError(`fuseA must be at most ${LARGEST_TABLED_A}, got ${fuseA}`);
  return asPrintedMm2(gauge) * MM2;
}

/** A lead and the fuse that goes with it: one is never named without the other. */
export interface LeadChoice {
  readonly sectionM2: number;
  readonly fuseA: number;
}

/**
 * The positive lead for an amplifier, with its fuse. The section is the largest of three: the one that loses no more than is
 * allowed at full bass, the one that the fuse for full bass protects, and the one that is there now; rounded up to one
 * that is sold. The fuse that is there stays if it carries full bass and the new lead carries it.
 *
 * Source: `sectionForDropM2`, made longer by `FINE_STRANDS_RATIO`; `fuseNeededA`; `sectionForFuseM2`. That a fuse is for
 * the lead and a lead for the current: 46 CFR 183.380.
 * Valid: copper, one lead, not bundled in a hot place. `fullBassA` is the current of the bass peaks, all channels driven.
 * @throws {RangeError} if a value is not above 0, or no section that is sold is thick enough (400 mm²).
 */
export function plusLeadFor({
  lengthM,
  fullBassA,
  fittedM2,
  fittedFuseA = 0,
}: {
  lengthM: number;
  fullBassA: number;
  fittedM2: number;
  fittedFuseA?: number;
}): LeadChoice {
  requirePositive({ fittedM2 });
  requireNotNegative({ fittedFuseA });
  const neededA = fuseNeededA({ currentA: fullBassA });
  const leastM2 = Math.max(
    FINE_STRANDS_RATIO * sectionForDropM2({ lengthM, currentA: fullBassA, lossV: PLUS_LEAD_MOST_V }),
    sectionForFuseM2({ fuseA: neededA }),
    fittedM2,
  );
  const sectionM2 = SECTIONS_SOLD_M2.find((soldM2) => soldM2 >= ROUNDING_RATIO * leastM2);
  if (sectionM2 === undefined) throw new RangeError(`no lead of ${leastM2} m² is sold`);
  const fits = fittedFuseA >= neededA && fittedFuseA <= largestFuseA({ sectionM2 });
  return { sectionM2, fuseA: fits ? fittedFuseA : neededA };
}
