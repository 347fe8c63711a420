import { copperResistanceOhm } from '../../compute/wire.ts';
import { real } from '../complex.ts';
import type { Element, Pair } from '../network.ts';
import { OPEN_OHM } from './contact.ts';
import { twoTerminal } from './two-terminal.ts';

/** How much more resistance copper-clad aluminium has than copper of its size. Common practice, no published source. */
export const CLAD_RATIO = 1.6;

/** One wire: how long, how thick, what of, and how warm. */
export interface Wire {
  readonly lengthM: number;
  readonly sectionM2: number;
  readonly metal?: 'copper' | 'clad';
  readonly temperatureC?: number;
}

/** The ohms of a wire: those of copper, and more when it only looks like it. */
export const wireOhm = ({ metal = 'copper', ...wire }: Wire): number =>
  copperResistanceOhm(wire) * (metal === 'clad' ? CLAD_RATIO : 1);

/**
 * A wire between two nodes, with what a break in its copper adds: `Infinity` for one that is broken through. One of no
 * length or no section is refused by the rules, by name.
 */
export const wire = (id: string, between: Pair, made: Wire, breakOhm = 0): Element => {
  const { lengthM, sectionM2 } = made;
  const sound = lengthM > 0 && sectionM2 > 0;
  return twoTerminal({
    id,
    kind: 'wire',
    between,
    positive: { lengthM, sectionM2 },
    admittanceS: () => real(sound ? 1 / (wireOhm(made) + Math.min(breakOhm, OPEN_OHM)) : 0),
  });
};
