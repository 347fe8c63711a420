import type { Pair } from '../network.ts';
import type { Nonlinear } from '../nonlinear.ts';
import { straightLine } from './straight-line.ts';

/**
 * Current of a filament over its volts, as a power. Source: lamp rerating, current in proportion to V^0.55, by which its
 * ohms go with V^0.45; the same follows from radiation with the fourth power of the temperature and tungsten whose
 * resistivity goes with about its power of 1.2. Valid: while it glows; the true exponent differs a little by lamp.
 */
export const FILAMENT_EXPONENT = 0.55;
/** Ohms of a cold filament over those at its rated volts. From memory: tungsten has 12 to 15 times less at 20 °C. */
export const COLD_RATIO = 1 / 13;

export interface Filament {
  /** What it draws at the volts that it is rated for. */
  readonly ratedV: number;
  readonly ratedA: number;
}

/** Amperes of a filament that has settled at these volts: below a twentieth of a volt it is cold, and a resistor. */
export function filamentA({ ratedV, ratedA }: Filament, volts: number): number {
  const ratio = Math.abs(volts) / ratedV;
  return Math.sign(volts) * ratedA * Math.min(ratio / COLD_RATIO, ratio ** FILAMENT_EXPONENT);
}

/** A lamp as a load: the dimmer it is, the fewer ohms it has. */
export const filament = (id: string, between: Pair, made: Filament): Nonlinear => {
  const { ratedV, ratedA } = made;
  const rest = { id, kind: 'filament', positive: { ratedV, ratedA } };
  const line = (conductanceS: number, atZeroA: number) => straightLine(rest, between, { conductanceS, atZeroA });
  const coldS = ratedA / (ratedV * COLD_RATIO);
  const coldBelowV = ratedV * COLD_RATIO ** (1 / (1 - FILAMENT_EXPONENT));
  return {
    id,
    between,
    first: line(ratedA / ratedV, 0),
    cornered: false,
    lineAt: (acrossV) => {
      if (Math.abs(acrossV) <= coldBelowV) return line(coldS, 0);
      const currentA = filamentA(made, acrossV);
      return line((FILAMENT_EXPONENT * currentA) / acrossV, (1 - FILAMENT_EXPONENT) * currentA);
    },
    currentA: (acrossV) => filamentA(made, acrossV),
  };
};
