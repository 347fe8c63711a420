import { Equations } from './equations.ts';
import type { Element, Network, Pair, Solution, Solved } from './network.ts';
import { refuse } from './rules/refuse.ts';
import { solveChecked } from './solve.ts';

/** How a straight line meets a curve: with its slope, or level at its height. */
export type Meets = 'tangent' | 'level';

/**
 * A part whose current is no straight line of its volts. Around any volts it has a straight line of its own, an ordinary
 * element of the same name.
 */
export interface Nonlinear {
  readonly id: string;
  readonly between: Pair;
  /** The line to begin with, before any volts are known. */
  readonly first: Element;
  /** Whether the law is made of straight pieces with corners, instead of a curve. */
  readonly cornered: boolean;
  /**
   * The line to go on with: the one that meets the law at these volts, or for a cornered law the piece next to the one it
   * is on, towards these volts. Null where the law has no point: there it cannot work.
   */
  lineAt(acrossV: number, now: Element, meets: Meets): Element | null;
  /** What the law itself lets through at these volts. */
  currentA(acrossV: number): number;
}

export type Converged = Solution & { readonly steps: number };

/** Amperes that a solution may miss a law by: far below any reading, far above rounding. */
const CLOSE_A: Readonly<Record<Meets, number>> = { tangent: 1e-9, level: 1e-6 };
const MOST_ROUNDS: Readonly<Record<Meets, number>> = { tangent: 20, level: 300 };
const MOST_TURNS = 40;

/**
 * The operating point of a network with nonlinear parts. Cornered parts are put on the right pieces for the lines of the
 * rest, then the rest meet their curves anew, until every part meets its own law. Where no point is found, the part that
 * misses most is named: more power is asked than the source can pass, and the volts collapse.
 *
 * Source: Newton's method for curves, as any circuit simulator has it; for corners the first part on a wrong piece moves
 * by one piece at a time (Murty, Note on a Bard-type scheme for solving the complementarity problem, Opsearch 11 (1974)
 * 123–130, from memory), since all at once they can send each other to and fro. Where tangents do not settle, level lines
 * do, slowly: from the unloaded volts downwards each round asks for more current and gets less volts, down to the upper
 * of the points of a power-dependent load, which is the stable one.
 * Valid: 0 Hz. `network` holds the linear elements.
 */
export function solveNonlinear(network: Network, parts: readonly Nonlinear[]): Converged {
  const first = parts.map((part) => part.first);
  const refusal = refuse({ ...network, elements: [...network.elements, ...first] });
  if (refusal) return { ok: false, ...refusal, steps: 0 };
  return solveNonlinearChecked(new Equations(network), parts);
}

/** The same without the rules, for linear elements and parts of which they were checked. */
export function solveNonlinearChecked(linear: Equations, parts: readonly Nonlinear[]): Converged {
  const newton = rounds(linear, parts, 'tangent');
  return newton.ok || newton.reason !== 'no-operating-point' ? newton : rounds(linear, parts, 'level');
}

function rounds(linear: Equations, parts: readonly Nonlinear[], meets: Meets): Converged {
  let lines = parts.map(({ first }) => first);
  let worst = parts[0]?.id ?? '';
  let steps = 0;
  for (let round = 0; round < MOST_ROUNDS[meets]; round++) {
    const settled = onTheirPieces(linear, parts, lines);
    steps += settled.steps;
    if (!settled.ok) return { ...settled.solution, steps };
    const { solution } = settled;
    lines = settled.lines;
    const misses = parts.map((part) => missedA(part, solution));
    const most = Math.max(0, ...misses);
    worst = parts[misses.indexOf(most)]?.id ?? worst;
    if (most <= CLOSE_A[meets]) return { ...solution, steps };
    const next = parts.map((part, i) => {
      const now = lines[i] ?? part.first;
      return part.cornered ? now : part.lineAt(solution.acrossV(part.between).re, now, meets);
    });
    const stuck = next.indexOf(null);
    if (stuck >= 0) return { ok: false, reason: 'no-operating-point', element: parts[stuck]?.id ?? worst, steps };
    lines = next.filter((line) => line !== null);
  }
  return { ok: false, reason: 'no-operating-point', element: worst, steps };
}

const missedA = (part: Nonlinear, solution: Solved): number =>
  Math.abs(solution.currentA(part.id).re - part.currentA(solution.acrossV(part.between).re));

type Settled =
  | { ok: true; solution: Solved; lines: Element[]; steps: number }
  | { ok: false; solution: Exclude<Solution, Solved>; steps: number };

/** Moves cornered parts, one at a time, until each is on the piece that its volts belong to. */
function onTheirPieces(linear: Equations, parts: readonly Nonlinear[], start: readonly Element[]): Settled {
  const lines = [...start];
  let wrong = '';
  for (let steps = 1; steps <= MOST_TURNS; steps++) {
    const solution = solveChecked(linear.with(lines));
    if (!solution.ok) return { ok: false, solution, steps };
    const turn = parts.findIndex((part) => part.cornered && missedA(part, solution) > CLOSE_A.tangent);
    const part = parts[turn];
    if (!part) return { ok: true, solution, lines, steps };
    wrong = part.id;
    lines[turn] = part.lineAt(solution.acrossV(part.between).re, lines[turn] ?? part.first, 'tangent') ?? part.first;
  }
  return { ok: false, solution: { ok: false, reason: 'no-operating-point', element: wrong }, steps: MOST_TURNS };
}
