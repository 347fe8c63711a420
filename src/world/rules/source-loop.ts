import type { Network, Refusal } from '../network.ts';
import { Groups } from './groups.ts';

/** Elements in a ring that all dictate volts: they contradict each other, or leave the ring's current undecided. */
export function sourceLoop({ elements }: Network): Refusal | null {
  const groups = new Groups();
  for (const { id, dictates = [] } of elements) {
    if (dictates.some(([from, to]) => !groups.join(from, to))) return { reason: 'source-loop', element: id };
  }
  return null;
}
