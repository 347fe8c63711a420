import { requirePositive } from './require.ts';
import { awgSectionM2 } from './wire.ts';

/**
 * Fuses as they are sold: blades to 100 A, bolted strips above. Source: ratings of ISO 8820-3 types C and E; 1 and 35 A
 * and the large ones from memory.
 */
export const FUSE_RATINGS_A: readonly number[] = [
  1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300,
];

/**
 * The largest fuse for a copper lead, by gauge, thickest first (4/0 is −3). To 4 gauge common practice, no published
 * source; thicker, the largest fuse that is sold below the allowable current of 33 CFR 183.425 table 5 for 60 °C
 * insulation. None is above that current, and so far below the 150 % of it that 33 CFR 183.455 allows a fuse to have.
 */
export const LARGEST_FUSE_BY_GAUGE_A: ReadonlyMap<number, number> = new Map([
  [-3, 300],
  [-2, 250],
  [-1, 225],
  [0, 175],
  [1, 150],
  [2, 125],
  [4, 100],
  [6, 70],
  [8, 40],
  [10, 30],
  [12, 20],
  [14, 15],
  [16, 10],
  [18, 5],
]);

/** Tables print sections rounded: 13.3 mm² stands for 13.302 mm². So much too thin still counts as the gauge. */
const ROUNDED_SECTION_RATIO = 0.995;

/**
 * The largest fuse that still protects a copper lead: the table's value for its gauge, or for the next thinner one.
 *
 * Source: `LARGEST_FUSE_BY_GAUGE_A`; a fuse protects the wire, equipment comes second (46 CFR 183.380).
 * Valid: copper, single leads, not bundled in a hot place; at an engine in 50 °C the marine table allows 15 % less, and
 * copper-clad aluminium carries about a third less. Thicker than 4/0 still gives 300 A: the table ends there.
 * @throws {RangeError} if the lead is thinner than 18 gauge (0.823 mm²), for which the table has no fuse.
 */
export function largestFuseA({ sectionM2 }: { sectionM2: number }): number {
  requirePositive({ sectionM2 });
  for (const [gauge, fuseA] of LARGEST_FUSE_BY_GAUGE_A) {
    if (sectionM2 >= ROUNDED_SECTION_RATIO * awgSectionM2(gauge)) return fuseA;
  }
  throw new RangeError(`sectionM2 must be at least 18 gauge (8.23e-7), got ${sectionM2}`);
}

/** Leads that amplifiers of bikes are found on: 12, 10, 8 and 6 gauge. Common practice, no published source. */
export const USUAL_LEADS_M2: readonly number[] = [3.31e-6, 5.26e-6, 8.37e-6, 13.3e-6];
