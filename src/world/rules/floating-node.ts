import type { Network, Refusal } from '../network.ts';
import { Groups } from './groups.ts';

/** A node from which no current can get to the reference has no volts: nothing says where it lies. */
export function floatingNode({ elements, reference }: Network): Refusal | null {
  const groups = new Groups();
  for (const { paths } of elements) for (const [from, to] of paths) groups.join(from, to);
  const head = groups.headOf(reference);
  for (const { paths, senses = [] } of elements)
    for (const pair of [...paths, senses])
      for (const node of pair) if (groups.headOf(node) !== head) return { reason: 'floating-node', node };
  return null;
}
