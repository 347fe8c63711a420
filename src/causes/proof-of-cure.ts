import type { ProofOfCure } from './cause.ts';

/** The check to show, and the other one that may stand behind it. */
export interface ProofShown {
  readonly first: string;
  readonly other?: { readonly title: string; readonly text: string };
}

/** Puts first the check that fits the tools at hand. A proof that is one sentence fits any. */
export function proofFor(proof: string | ProofOfCure, meterAtHand: boolean): ProofShown {
  if (typeof proof === 'string') return { first: proof };
  const { byEar, byMeter } = proof;
  if (byMeter === undefined) return { first: byEar };
  return meterAtHand
    ? { first: byMeter, other: { title: 'Without a meter', text: byEar } }
    : { first: byEar, other: { title: 'With a meter', text: byMeter } };
}
