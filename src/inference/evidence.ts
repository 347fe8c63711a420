import { type Knowledge, posterior, says, shareOf } from './posterior.ts';
import type { Model } from './table.ts';

/** How far one answer moved the odds of a cause: bits above nought speak for it. */
export interface Moved {
  readonly step: string;
  readonly outcome: string;
  readonly bits: number;
}

const oddsBits = (share: number): number => Math.log2(Math.max(share, 1e-9) / Math.max(1 - share, 1e-9));

/**
 * What each answer did for or against a cause: the odds with all answers over those without this one, in bits. The
 * strongest first.
 */
export function evidenceFor(model: Model, { observations, repairs }: Knowledge, cause: string): readonly Moved[] {
  const whole = oddsBits(shareOf(model, posterior(model, { observations, repairs }), cause));
  return observations
    .filter((one) => says(model, one))
    .map((one) => {
      const rest = observations.filter((other) => other !== one);
      const less = oddsBits(shareOf(model, posterior(model, { observations: rest, repairs }), cause));
      return { step: one.step, outcome: one.outcome, bits: whole - less };
    })
    .toSorted((a, b) => Math.abs(b.bits) - Math.abs(a.bits));
}
