import { expect } from 'vitest';
import { type Complex, magnitude } from '../../src/world/complex.ts';
import type { Element, Network, Solved } from '../../src/world/network.ts';
import { solve } from '../../src/world/solve.ts';

/** A network around a node called ground. */
export const network = (elements: readonly Element[], frequencyHz = 0): Network => ({
  elements,
  reference: 'ground',
  frequencyHz,
});

/** The solution of a network that has to have one. */
export function solved(elements: readonly Element[], frequencyHz = 0): Solved {
  const solution = solve(network(elements, frequencyHz));
  if (!solution.ok) throw new Error(`no solution: ${JSON.stringify(solution)}`);
  return solution;
}

/**
 * What flows out of a node into all elements must add up to nothing. Rounding is that of the largest flow at the node,
 * and of the volts of the network, which a milliohm turns into amperes.
 */
export function expectConserved(elements: readonly Element[], solution: Solved): void {
  const sums = new Map<string, { re: number; im: number; most: number }>();
  const take = (node: string, { re, im }: Complex, sign: number) => {
    const sum = sums.get(node) ?? { re: 0, im: 0, most: 0 };
    const most = Math.max(sum.most, magnitude({ re, im }));
    sums.set(node, { re: sum.re + sign * re, im: sum.im + sign * im, most });
  };
  for (const { id } of elements) {
    for (const { through, currentA } of solution.flows(id)) {
      take(through[0], currentA, 1);
      take(through[1], currentA, -1);
    }
  }
  const mostV = Math.max(...[...sums.keys()].map((node) => magnitude(solution.voltageV(node))));
  for (const [node, { re, im, most }] of sums) {
    const allowedA = 1e-9 * (1 + most + mostV);
    expect(Math.hypot(re, im), `what flows out of ${node}`).toBeLessThanOrEqual(allowedA);
  }
}
