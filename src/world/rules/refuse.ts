import type { Network, Refusal } from '../network.ts';
import { floatingNode } from './floating-node.ts';
import { sourceLoop } from './source-loop.ts';
import { badValue, sameName } from './values.ts';

const RULES = [sameName, badValue, sourceLoop, floatingNode] as const;

/** The first rule that a network breaks, or null. A wrong value comes before what it may lead to. */
export function refuse(network: Network): Refusal | null {
  for (const rule of RULES) {
    const refusal = rule(network);
    if (refusal) return refusal;
  }
  return null;
}
