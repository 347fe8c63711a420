import { real } from '../complex.ts';
import type { Element, Pair } from '../network.ts';
import { twoTerminal } from './two-terminal.ts';

/** Ohm's law: I = U / R. A joint of no resistance at all is no resistor: give both its ends one name. */
export const resistor = (id: string, between: Pair, resistanceOhm: number): Element =>
  twoTerminal({
    id,
    kind: 'resistor',
    between,
    positive: { resistanceOhm },
    admittanceS: () => real(1 / resistanceOhm),
  });
