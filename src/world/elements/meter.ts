import { real } from '../complex.ts';
import type { Element, Pair } from '../network.ts';
import { twoTerminal } from './two-terminal.ts';

/** Input resistance of a usual digital meter on its volts ranges. Common practice, no published source. */
export const METER_INPUT_OHM = 10e6;

/** A meter on a volts range: it is part of the circuit that it reads. */
export const voltmeter = (id: string, between: Pair, inputOhm: number = METER_INPUT_OHM): Element =>
  twoTerminal({ id, kind: 'meter', between, positive: { inputOhm }, admittanceS: () => real(1 / inputOhm) });
