import { requireNotNegative, requirePositive, requireWhole, requireWithin } from './require.ts';

/** Resistivity of annealed copper at 20 °C, 100 % IACS. Source: IEC 60028. Copper-clad aluminium has about 1.6 times it. */
export const COPPER_RESISTIVITY_OHM_M = 1.7241e-8;

/** How much of its resistance at 20 °C copper gains for each kelvin above. Source: IEC 60028; NBS Handbook 100. */
export const COPPER_TEMPERATURE_COEFFICIENT_PER_K = 0.00393;

type Wire = { lengthM: number; sectionM2: number; temperatureC?: number };

/**
 * DC resistance of one solid copper wire: R = ρ L / A × (1 + α (t − 20 °C)).
 *
 * Source: IEC 60028 for ρ and α. NBS Handbook 100 tabulates the result.
 * Valid: −50 to 200 °C; outside, the straight line in t leaves the true curve. Stranded wire of the same copper section
 * has about 2 % more, since its strands are longer than the wire; thin soft wire up to 16 % more (IEC 60228, class 5).
 * Assumes `lengthM` is all the copper the current passes: out and back is twice the distance.
 * @throws {RangeError} if the length is negative, the section not above 0, or the temperature outside that range.
 */
export function copperResistanceOhm({ lengthM, sectionM2, temperatureC = 20 }: Wire): number {
  requireNotNegative({ lengthM });
  requirePositive({ sectionM2 });
  requireWithin({ temperatureC }, -50, 200);
  const hotter = 1 + COPPER_TEMPERATURE_COEFFICIENT_PER_K * (temperatureC - 20);
  return ((COPPER_RESISTIVITY_OHM_M * lengthM) / sectionM2) * hotter;
}

/**
 * Diameter of a solid wire of the gauge series: d = 0.127 mm × 92^((36 − n) / 39). 1/0 is 0, 2/0 is −1, 4/0 is −3.
 *
 * Source: ASTM B258. Valid: 4/0 to 40. Inches are in the definition (0.005 in), so the metric figure is exact.
 * @throws {RangeError} if the gauge is not a whole number from −3 to 40.
 */
export function awgDiameterM(gauge: number): number {
  requireWhole({ gauge }, -3, 40);
  return 0.127e-3 * 92 ** ((36 - gauge) / 39);
}

/**
 * Copper section of the gauge: A = π d² / 4. Source, validity: as `awgDiameterM`; stranded wire is sold by the same
 * copper section, and is thicker.
 *
 * @throws {RangeError} as `awgDiameterM`.
 */
export function awgSectionM2(gauge: number): number {
  return (Math.PI * awgDiameterM(gauge) ** 2) / 4;
}

/**
 * Volts lost in a resistance: U = I R.
 *
 * Source: Ohm's law; Lessons In Electric Circuits, DC vol., "Ohm's Law". Valid: steady current; for the drop in a lead
 * that feeds an amplifier, take the current of the bass peaks and the drop at that moment.
 * @throws {RangeError} if either is negative or not finite.
 */
export function dropV({ currentA, resistanceOhm }: { currentA: number; resistanceOhm: number }): number {
  requireNotNegative({ currentA, resistanceOhm });
  return currentA * resistanceOhm;
}

/**
 * The copper section that loses a given voltage at a given current: A = ρ L I / U. `copperResistanceOhm` with Ohm's law,
 * turned round; the same source, at 20 °C.
 *
 * Valid: solid copper; take the next thicker lead that is sold. A fuse needs its own look at the lead.
 * @throws {RangeError} if a value is not finite and above 0.
 */
export function sectionForDropM2({
  lengthM,
  currentA,
  lossV,
}: {
  lengthM: number;
  currentA: number;
  lossV: number;
}): number {
  requirePositive({ lengthM, currentA, lossV });
  return (COPPER_RESISTIVITY_OHM_M * lengthM * currentA) / lossV;
}
