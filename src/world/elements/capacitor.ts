import type { Element, Pair } from '../network.ts';
import { twoTerminal } from './two-terminal.ts';

/** What a coupling capacitor lets through of DC. From memory; small enough for any meter to read nothing behind it. */
export const LEAK_OHM = 1e8;

/** A capacitor: Y = 1 / leak + jωC. To DC it is its leak, which is next to open. */
export const capacitor = (id: string, between: Pair, capacitanceF: number): Element =>
  twoTerminal({
    id,
    kind: 'capacitor',
    between,
    positive: { capacitanceF },
    admittanceS: (frequencyHz) => ({ re: 1 / LEAK_OHM, im: 2 * Math.PI * frequencyHz * capacitanceF }),
  });
