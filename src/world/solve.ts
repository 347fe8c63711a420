import { type Complex, subtract, ZERO } from './complex.ts';
import { Equations } from './equations.ts';
import { solveEquations } from './lu.ts';
import type { Network, Reading, Solution } from './network.ts';
import { refuse } from './rules/refuse.ts';

/**
 * Volts at every node and what flows in every element, at one frequency. What cannot be solved is a result that names
 * the node or the element; nothing is thrown and nothing is left standing in for an answer.
 */
export function solve(network: Network): Solution {
  const refusal = refuse(network);
  return refusal ? { ok: false, ...refusal } : solveChecked(new Equations(network));
}

/** The same without the rules, for equations of a network of which they were checked. */
export function solveChecked(equations: Equations): Solution {
  const { nodes, branches, elements, reference, frequencyHz } = equations;
  const solved = solveEquations(equations);
  if (!solved.ok) {
    const at = nodes.nameOf(solved.column) ?? branches.nameOf(solved.column) ?? reference;
    return { ok: false, reason: 'no-pivot', at };
  }
  const { x } = solved;
  const known = (column: number | undefined, name: string, what: string): Complex => {
    if (column === undefined) throw new RangeError(`${what} must be one of the network, got ${name}`);
    return { re: x[2 * column] as number, im: x[2 * column + 1] as number };
  };
  const reading: Reading = {
    frequencyHz,
    voltageV: (node) => (node === reference ? ZERO : known(nodes.get(node), node, 'node')),
    branchA: (name) => known(branches.get(name), name, 'branch'),
  };
  const flows = (id: string) => {
    const element = elements.find((one) => one.id === id);
    if (!element) throw new RangeError(`element must be one of the network, got ${id}`);
    return element.flows(reading);
  };
  return {
    ok: true,
    frequencyHz,
    has: (node) => node === reference || nodes.get(node) !== undefined,
    voltageV: reading.voltageV,
    acrossV: ([from, to]) => subtract(reading.voltageV(from), reading.voltageV(to)),
    flows,
    currentA: (id) => flows(id)[0]?.currentA ?? ZERO,
  };
}
