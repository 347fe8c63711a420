import { STRANGE_POWER } from './power.ts';
import { STRANGE_RUNS } from './run.ts';
import { STRANGE_SIGNAL } from './signal.ts';
import type { StrangeFault } from './strange-fault.ts';
import { STRANGE_TURN_ON } from './turn-on.ts';

export type { StrangeFault } from './strange-fault.ts';

/** Faults that exist only here. */
export const STRANGE_FAULTS: readonly StrangeFault[] = [
  ...STRANGE_POWER,
  ...STRANGE_TURN_ON,
  ...STRANGE_SIGNAL,
  ...STRANGE_RUNS,
];
