import type { PerCorner } from '../../rig/corner.ts';
import { Equations } from '../equations.ts';
import type { Moment } from '../moment.ts';
import type { Element, Refusal, Solved } from '../network.ts';
import { oncePerKey } from '../remembered.ts';
import { refuse } from '../rules/refuse.ts';
import { solveChecked } from '../solve.ts';
import type { ValuedRig } from '../valued-rig.ts';
import { MINUS } from './nodes.ts';

/** What hangs on the outputs of a device, without the outputs themselves: it stays while they play this or that. */
export interface Wiring {
  /** Why it cannot be, with these outputs on it. Only values of them may change afterwards. */
  refusal(outputs: readonly Element[]): Refusal | null;
  /** A signal network that the rules have let pass is sound by construction: a refusal here is a slip in its making. */
  solve(outputs: readonly Element[], frequencyHz: number): Solved;
  /** The same, looked up where these outputs were on it before. The key says all that they give. */
  solveOnce(key: string, outputs: () => readonly Element[], frequencyHz: number): Solved;
}

export function wiringOf(elements: readonly Element[]): Wiring {
  const known = new Map<number, Equations>();
  const equationsAt = (frequencyHz: number): Equations => {
    const found = known.get(frequencyHz) ?? new Equations({ elements, reference: MINUS, frequencyHz });
    known.set(frequencyHz, found);
    return found;
  };
  const solutions = new Map<string, Solved>();
  const solve = (outputs: readonly Element[], frequencyHz: number): Solved => {
    const solution = solveChecked(equationsAt(frequencyHz).with(outputs));
    if (!solution.ok) throw new Error(`the signal network is unsound: ${JSON.stringify(solution)}`);
    return solution;
  };
  return {
    refusal: (outputs) => refuse({ elements: [...outputs, ...elements], reference: MINUS, frequencyHz: 0 }),
    solve,
    solveOnce: (key, outputs, frequencyHz) => {
      const solution = solutions.get(key) ?? solve(outputs(), frequencyHz);
      solutions.set(key, solution);
      return solution;
    },
  };
}

const knownLoads = new WeakMap<Wiring, PerCorner<number>>();
/** What the outputs of a device see, worked out once for each wiring. */
export function loadsOn(wiring: Wiring, make: () => PerCorner<number>): PerCorner<number> {
  const loads = knownLoads.get(wiring) ?? make();
  knownLoads.set(wiring, loads);
  return loads;
}

/** What of a moment changes a wire or a contact. */
export const handlingOf = ({ apart, moves, hot }: Moment): string => `${apart} ${moves} ${hot}`;

/** Wirings of the bikes of one build: they share those in which a fault changes nothing. */
export const knownWirings = oncePerKey<ValuedRig, Wiring>();
