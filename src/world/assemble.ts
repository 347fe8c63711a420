import { type Complex, ONE } from './complex.ts';
import type { BranchLaw, Element, Network, Pair, System } from './network.ts';

/** The equations of a network, and which unknown is which. The first unknowns are nodes, the rest branches. */
export interface Equations {
  readonly rows: readonly Float64Array[];
  readonly nodes: ReadonlyMap<string, number>;
  readonly branches: ReadonlyMap<string, number>;
}

export const nodesOf = ({ paths, senses = [] }: Element): readonly string[] => [...paths.flat(), ...senses];

/** The reference has no equation and no unknown of its own. */
const NONE = -1;

type Collected = { pair: Pair; admittanceS: Complex } | { pair: Pair; currentA: Complex };

/**
 * Modified nodal analysis: one equation a node (what flows out of it adds up to nothing), one a branch (its law).
 *
 * Source: Ho, Ruehli and Brennan, The modified nodal approach to network analysis, IEEE Trans. CAS-22 (1975) 504–509.
 */
export function assemble({ elements, reference, frequencyHz }: Network): Equations {
  const nodes = new Map<string, number>();
  const name = (node: string) => {
    if (node !== reference && !nodes.has(node)) nodes.set(node, nodes.size);
  };
  for (const { paths, senses } of elements) {
    for (const [from, to] of paths) {
      name(from);
      name(to);
    }
    senses?.forEach(name);
  }

  const collected: Collected[] = [];
  const laws: { name: string; pair: Pair; law: BranchLaw }[] = [];
  const system: System = {
    frequencyHz,
    addAdmittance: (pair, admittanceS) => collected.push({ pair, admittanceS }),
    addCurrent: (pair, currentA) => collected.push({ pair, currentA }),
    addBranch: (name, pair, law) => laws.push({ name, pair, law }),
  };
  for (const element of elements) element.stamp(system);

  const branches = new Map(laws.map(({ name }, i) => [name, nodes.size + i]));
  const size = nodes.size + laws.length;
  const wide = 2 * (size + 1);
  const cellsOfAll = new Float64Array(size * wide);
  const rows = Array.from({ length: size }, (_, i) => cellsOfAll.subarray(i * wide, (i + 1) * wide));
  const column = (node: string) => nodes.get(node) ?? NONE;
  const put = (row: number, at: number, { re, im }: Complex, sign: 1 | -1) => {
    if (row === NONE || at === NONE) return;
    const cells = rows[row] as Float64Array;
    cells[2 * at] = (cells[2 * at] as number) + sign * re;
    cells[2 * at + 1] = (cells[2 * at + 1] as number) + sign * im;
  };

  for (const entry of collected) {
    const from = column(entry.pair[0]);
    const to = column(entry.pair[1]);
    if ('currentA' in entry) {
      put(from, size, entry.currentA, -1);
      put(to, size, entry.currentA, 1);
      continue;
    }
    put(from, from, entry.admittanceS, 1);
    put(to, to, entry.admittanceS, 1);
    put(from, to, entry.admittanceS, -1);
    put(to, from, entry.admittanceS, -1);
  }
  laws.forEach(({ pair, law }, i) => {
    const own = nodes.size + i;
    const from = column(pair[0]);
    const to = column(pair[1]);
    put(from, own, ONE, 1);
    put(to, own, ONE, -1);
    put(own, from, ONE, 1);
    put(own, to, ONE, -1);
    if (law.seriesOhm) put(own, own, law.seriesOhm, -1);
    if (law.driveV) put(own, size, law.driveV, 1);
    for (const { over, gainRatio } of law.follows ?? []) {
      put(own, column(over[0]), gainRatio, -1);
      put(own, column(over[1]), gainRatio, 1);
    }
  });
  return { rows, nodes, branches };
}
