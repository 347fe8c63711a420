import { add, type Complex, inverse, real } from '../complex.ts';
import type { Element, Pair } from '../network.ts';
import { twoTerminal } from './two-terminal.ts';

/** What the cone's motion adds to a coil around its resonance. */
export interface Motion {
  readonly peakOhm: number;
  readonly resonanceHz: number;
  readonly q: number;
}
export interface Coil {
  readonly resistanceOhm: number;
  readonly inductanceH?: number;
  readonly motion?: Motion;
}

/**
 * Impedance of a voice coil: Z = R + jωL + peak / (1 + jQ (f/f0 − f0/f)).
 *
 * Source: Small, Direct-radiator loudspeaker system analysis, J. Audio Eng. Soc. 20 (1972) 383–395, from memory.
 * Valid: small signals. At 0 Hz only R is left, which is what an ohmmeter reads.
 */
export function coilImpedanceOhm({ resistanceOhm, inductanceH = 0, motion }: Coil, frequencyHz: number): Complex {
  const still = { re: resistanceOhm, im: 2 * Math.PI * frequencyHz * inductanceH };
  if (!motion || frequencyHz === 0) return still;
  const off = motion.q * (frequencyHz / motion.resonanceHz - motion.resonanceHz / frequencyHz);
  const moved = inverse(add(real(1), { re: 0, im: off }));
  return add(still, { re: motion.peakOhm * moved.re, im: motion.peakOhm * moved.im });
}

/** A voice coil between its two tabs. */
export const coil = (id: string, between: Pair, made: Coil): Element =>
  twoTerminal({
    id,
    kind: 'coil',
    between,
    positive: { resistanceOhm: made.resistanceOhm, ...made.motion },
    notNegative: { inductanceH: made.inductanceH ?? 0 },
    admittanceS: (frequencyHz) => inverse(coilImpedanceOhm(made, frequencyHz)),
  });
