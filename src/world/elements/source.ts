import { type Complex, real } from '../complex.ts';
import type { BranchLaw, Element, Pair } from '../network.ts';

/** A branch with its own current: the law is handed over whole, and what flows is that unknown. */
export const branch = (
  rest: Pick<Element, 'id' | 'kind' | 'senses' | 'dictates' | 'positive' | 'notNegative'>,
  between: Pair,
  lawAt: (frequencyHz: number) => BranchLaw,
): Element => ({
  ...rest,
  paths: [between],
  stamp: (system) => system.addBranch(rest.id, between, lawAt(system.frequencyHz)),
  flows: (at) => [{ through: between, currentA: at.branchA(rest.id) }],
});

/**
 * Volts that do not depend on what is taken: V(from) − V(to) = drive. DC has 0 V at any other frequency, a tone 0 V at
 * 0 Hz: name the frequency that it drives, or leave it out for one that drives at all. Its current counts into `from`,
 * so it is negative while it delivers.
 */
export const voltageSource = (id: string, between: Pair, driveV: Complex | number, onlyHz?: number): Element =>
  branch({ id, kind: 'voltage-source', dictates: [between] }, between, (frequencyHz) => ({
    driveV:
      onlyHz !== undefined && onlyHz !== frequencyHz ? real(0) : typeof driveV === 'number' ? real(driveV) : driveV,
  }));

/** A current that does not depend on the volts: the loads of the bike that are not looked into. */
export const currentSource = (id: string, through: Pair, currentA: Complex | number, onlyHz = 0): Element => {
  const flowsA = typeof currentA === 'number' ? real(currentA) : currentA;
  const at = (frequencyHz: number) => (frequencyHz === onlyHz ? flowsA : real(0));
  return {
    id,
    kind: 'current-source',
    paths: [],
    senses: through,
    stamp: (system) => system.addCurrent(through, at(system.frequencyHz)),
    flows: ({ frequencyHz }) => [{ through, currentA: at(frequencyHz) }],
  };
};
