import { lowerFirst } from '../compute/first-letter.ts';
import type { ProofOfCure } from './cause.ts';

/** The check to show, and the other one that may stand behind it. */
export interface ProofShown {
  readonly first: string;
  /** What is to be heard or seen once the reading is right. */
  readonly sensed?: string;
  readonly other?: { readonly title: string; readonly text: string };
}

/** Puts first the check that fits the tools at hand. A reading alone is no cure: it ends in what the rider hears or sees. */
export function proofFor(proof: string | ProofOfCure, meterAtHand: boolean): ProofShown {
  if (typeof proof === 'string') return { first: proof };
  const { byEar, byMeter } = proof;
  if (byMeter === undefined) return { first: byEar };
  return meterAtHand
    ? { first: byMeter, sensed: `Then look and listen: ${lowerFirst(byEar)}` }
    : { first: byEar, other: { title: 'With a meter', text: byMeter } };
}
