import type { Complex } from './complex.ts';
import { negative } from './complex.ts';
import type { BranchLaw, Element, Network, Pair, System } from './network.ts';

/** The equations of a network, and which unknown is which. The first unknowns are nodes, the rest branches. */
export interface Equations {
  readonly rows: readonly Float64Array[];
  readonly nodes: ReadonlyMap<string, number>;
  readonly branches: ReadonlyMap<string, number>;
}

export const nodesOf = ({ paths, senses = [] }: Element): readonly string[] => [...paths.flat(), ...senses];

type Collected = { pair: Pair; admittanceS: Complex } | { pair: Pair; currentA: Complex };

/**
 * Modified nodal analysis: one equation a node (what flows out of it adds up to nothing), one a branch (its law).
 *
 * Source: Ho, Ruehli and Brennan, The modified nodal approach to network analysis, IEEE Trans. CAS-22 (1975) 504–509.
 */
export function assemble({ elements, reference, frequencyHz }: Network): Equations {
  const nodes = new Map<string, number>();
  for (const node of elements.flatMap(nodesOf)) if (node !== reference && !nodes.has(node)) nodes.set(node, nodes.size);

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
  const rows = Array.from({ length: size }, () => new Float64Array(2 * (size + 1)));
  const put = (row: number | undefined, column: number | undefined, value: Complex) => {
    if (row === undefined || column === undefined) return;
    const cells = rows[row] as Float64Array;
    cells[2 * column] = (cells[2 * column] as number) + value.re;
    cells[2 * column + 1] = (cells[2 * column + 1] as number) + value.im;
  };

  for (const entry of collected) {
    const [from, to] = entry.pair.map((node) => nodes.get(node));
    if ('currentA' in entry) {
      put(from, size, negative(entry.currentA));
      put(to, size, entry.currentA);
      continue;
    }
    put(from, from, entry.admittanceS);
    put(to, to, entry.admittanceS);
    put(from, to, negative(entry.admittanceS));
    put(to, from, negative(entry.admittanceS));
  }
  laws.forEach(({ pair, law }, i) => {
    const own = nodes.size + i;
    const [from, to] = pair.map((node) => nodes.get(node));
    const [one, less] = [
      { re: 1, im: 0 },
      { re: -1, im: 0 },
    ];
    put(from, own, one);
    put(to, own, less);
    put(own, from, one);
    put(own, to, less);
    if (law.seriesOhm) put(own, own, negative(law.seriesOhm));
    if (law.driveV) put(own, size, law.driveV);
    for (const { over, gainRatio } of law.follows ?? []) {
      put(own, nodes.get(over[0]), negative(gainRatio));
      put(own, nodes.get(over[1]), gainRatio);
    }
  });
  return { rows, nodes, branches };
}
