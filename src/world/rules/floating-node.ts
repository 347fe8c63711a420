import type { Element, Network, Refusal } from '../network.ts';
import { Groups } from './groups.ts';

const nodesOf = ({ paths, senses = [] }: Element): readonly string[] => [...paths.flat(), ...senses];

/** A node from which no current can get to the reference has no volts: nothing says where it lies. */
export function floatingNode({ elements, reference }: Network): Refusal | null {
  const groups = new Groups();
  for (const { paths } of elements) for (const [from, to] of paths) groups.join(from, to);
  const head = groups.headOf(reference);
  const node = elements.flatMap(nodesOf).find((name) => groups.headOf(name) !== head);
  return node === undefined ? null : { reason: 'floating-node', node };
}
