import type { Element, Network, Pair, Solution } from './network.ts';
import { refuse } from './rules/refuse.ts';
import { solveChecked } from './solve.ts';

/**
 * A part whose current is no straight line of its volts. Around any volts it has a straight line of its own, an ordinary
 * element of the same name, that touches its law there.
 */
export interface Nonlinear {
  readonly id: string;
  readonly between: Pair;
  /** The line to begin with, before any volts are known. */
  readonly first: Element;
  /** The line that touches the law at these volts, or null where the law has no point: there it cannot work. */
  lineAt(acrossV: number): Element | null;
  /** What the law itself lets through at these volts. */
  currentA(acrossV: number): number;
}

/** Amperes that a solution may miss a law by: far below any reading, far above rounding. */
const CLOSE_A = 1e-9;
const MOST_STEPS = 60;

export type Converged = Solution & { readonly steps: number };

/**
 * The operating point of a network with nonlinear parts, by Newton's method: each part is replaced by its straight line
 * at the volts found so far until every part meets its own law. Where no point is found the part that misses most is named: more power
 * is asked than the source can pass, and the volts collapse.
 *
 * Source: Newton's method, as any circuit simulator has it. From the unloaded volts downwards it meets the upper of the
 * two points of a power-dependent load, which is the stable one.
 * Valid: 0 Hz. `network` holds the linear elements.
 */
export function solveNonlinear(network: Network, parts: readonly Nonlinear[]): Converged {
  const withLines = (lines: readonly Element[]): Network => ({ ...network, elements: [...network.elements, ...lines] });
  let lines = parts.map(({ first }) => first);
  const refusal = refuse(withLines(lines));
  if (refusal) return { ok: false, ...refusal, steps: 0 };

  let worst = parts[0]?.id ?? '';
  for (let step = 1; step <= MOST_STEPS; step++) {
    const solution = solveChecked(withLines(lines));
    if (!solution.ok) return { ...solution, steps: step };
    const states = parts.map((part) => {
      const acrossV = solution.acrossV(part.between).re;
      const line = part.lineAt(acrossV);
      const missedA = line ? Math.abs(solution.currentA(part.id).re - part.currentA(acrossV)) : Infinity;
      return { part, line, missedA };
    });
    const most = states.reduce((a, b) => (b.missedA > a.missedA ? b : a), states[0] ?? { missedA: 0, part: null });
    if (most.missedA <= CLOSE_A) return { ...solution, steps: step };
    worst = most.part?.id ?? worst;
    if (most.missedA === Infinity) return { ok: false, reason: 'no-operating-point', element: worst, steps: step };
    lines = states.flatMap(({ line }) => line ?? []);
  }
  return { ok: false, reason: 'no-operating-point', element: worst, steps: MOST_STEPS };
}
