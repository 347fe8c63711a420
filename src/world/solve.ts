import { assemble } from './assemble.ts';
import { type Complex, subtract, ZERO } from './complex.ts';
import { solveRows } from './lu.ts';
import type { Element, Network, Reading, Solution } from './network.ts';
import { refuse } from './rules/refuse.ts';

/**
 * Volts at every node and what flows in every element, at one frequency. What cannot be solved is a result that names
 * the node or the element; nothing is thrown and nothing is left standing in for an answer.
 */
export function solve(network: Network): Solution {
  const refusal = refuse(network);
  return refusal ? { ok: false, ...refusal } : solveChecked(network);
}

/** The same without the rules, for a network of which they were checked: only values in it have changed since. */
export function solveChecked(network: Network): Solution {
  const { rows, nodes, branches } = assemble(network);
  const solved = solveRows(rows);
  if (!solved.ok) {
    const at = [...nodes, ...branches].find(([, column]) => column === solved.column)?.[0] ?? network.reference;
    return { ok: false, reason: 'no-pivot', at };
  }
  const valueAt = (column: number): Complex => ({
    re: solved.x[2 * column] as number,
    im: solved.x[2 * column + 1] as number,
  });
  const known = (map: ReadonlyMap<string, number>, name: string, what: string): Complex => {
    const column = map.get(name);
    if (column === undefined) throw new RangeError(`${what} must be one of the network, got ${name}`);
    return valueAt(column);
  };
  const reading: Reading = {
    frequencyHz: network.frequencyHz,
    voltageV: (node) => (node === network.reference ? ZERO : known(nodes, node, 'node')),
    branchA: (name) => known(branches, name, 'branch'),
  };
  const byId = new Map<string, Element>(network.elements.map((element) => [element.id, element]));
  const flows = (id: string) => {
    const element = byId.get(id);
    if (!element) throw new RangeError(`element must be one of the network, got ${id}`);
    return element.flows(reading);
  };
  return {
    ok: true,
    frequencyHz: network.frequencyHz,
    has: (node) => node === network.reference || nodes.has(node),
    voltageV: reading.voltageV,
    acrossV: ([from, to]) => subtract(reading.voltageV(from), reading.voltageV(to)),
    flows,
    currentA: (id) => flows(id)[0]?.currentA ?? ZERO,
  };
}
