import { requirePositive, requireWhole } from './require.ts';
import { copperResistanceOhm } from './wire.ts';

/** How the speakers of one run are joined. */
export type Wiring = 'single' | 'parallel' | 'series';

/**
 * The cold DC resistance of a healthy voice coil over its rated ohms. Common practice, no published source: both ends
 * are from memory, and makers differ.
 */
export const COIL_LOWEST_RATIO = 0.7;
export const COIL_HIGHEST_RATIO = 0.95;

/** The lowest impedance a speaker may have over its rated impedance. Source: IEC 60268-5, 16.1. */
export const LOWEST_IMPEDANCE_RATIO = 0.8;

/**
 * Loads side by side: 1 / Σ(1/R). Source: Lessons In Electric Circuits, DC vol., "Simple parallel circuits".
 *
 * @throws {RangeError} if there is none, or one is not finite and above 0.
 */
export function parallelOhm(loadsOhm: readonly number[]): number {
  return 1 / sumOf(loadsOhm, (loadOhm) => 1 / loadOhm);
}

/**
 * Loads in a row: ΣR. Source: Lessons In Electric Circuits, DC vol., "Simple series circuits".
 *
 * @throws {RangeError} if there is none, or one is not finite and above 0.
 */
export function seriesOhm(loadsOhm: readonly number[]): number {
  return sumOf(loadsOhm, (loadOhm) => loadOhm);
}

function sumOf(loadsOhm: readonly number[], part: (loadOhm: number) => number): number {
  if (loadsOhm.length === 0) throw new RangeError('loadsOhm must name at least one load, got none');
  for (const loadOhm of loadsOhm) requirePositive({ loadOhm });
  return loadsOhm.reduce((sum, loadOhm) => sum + part(loadOhm), 0);
}

/**
 * The ohms a meter shows at a healthy, cold voice coil: 0.7 to 0.95 × rated.
 *
 * Source: common practice, no published source. Valid: a bare driver. Behind a series capacitor it reads open and is
 * healthy. Just after loud music a coil is hot and reads up to half more. The test leads' own ohms come on top.
 * @throws {RangeError} if the rated ohms are not finite and above 0.
 */
export function coilBandOhm({ ratedOhm }: { ratedOhm: number }): { lowOhm: number; highOhm: number } {
  requirePositive({ ratedOhm });
  return { lowOhm: COIL_LOWEST_RATIO * ratedOhm, highOhm: COIL_HIGHEST_RATIO * ratedOhm };
}

/**
 * The lowest impedance a speaker may show anywhere in its range: 0.8 × rated. Source: IEC 60268-5, 16.1.
 *
 * @throws {RangeError} if the rated ohms are not finite and above 0.
 */
export function lowestImpedanceOhm({ ratedOhm }: { ratedOhm: number }): number {
  requirePositive({ ratedOhm });
  return LOWEST_IMPEDANCE_RATIO * ratedOhm;
}

type Speakers = { ratedOhm: number; count: number; wiring: Wiring };
type Run = { wireLengthM: number; wireSectionM2: number };

/**
 * The rated ohms of `count` equal speakers on one channel: R / n side by side, n R in a row, R for one alone.
 *
 * Source: as `parallelOhm` and `seriesOhm`. Valid: equal speakers; others go through those two.
 * @throws {RangeError} if the rated ohms are not above 0, the count is not whole, or a single is not one.
 */
export function combinedRatedOhm({ ratedOhm, count, wiring }: Speakers): number {
  requireWhole({ count }, 1, wiring === 'single' ? 1 : 8);
  const loadsOhm = Array.from({ length: count }, () => ratedOhm);
  return wiring === 'parallel' ? parallelOhm(loadsOhm) : seriesOhm(loadsOhm);
}

/**
 * The ohms a meter shows at the amplifier's end of a healthy speaker run: the coils, combined, plus both wires.
 *
 * Source: `coilBandOhm` for the coils, `copperResistanceOhm` for the wires.
 * Valid: cold, lead plugged off the amplifier, the test leads' own ohms taken off the reading. `wireLengthM` is one way.
 * @throws {RangeError} if a value is out of the range of those functions.
 */
export function runBandOhm({ wireLengthM, wireSectionM2, ...speakers }: Speakers & Run): {
  lowOhm: number;
  highOhm: number;
} {
  const coil = coilBandOhm({ ratedOhm: combinedRatedOhm(speakers) });
  const wiresOhm = copperResistanceOhm({ lengthM: 2 * wireLengthM, sectionM2: wireSectionM2 });
  return { lowOhm: coil.lowOhm + wiresOhm, highOhm: coil.highOhm + wiresOhm };
}
