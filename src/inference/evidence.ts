import { type Knowledge, type Observation, posterior, says, shareOf } from './posterior.ts';
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
 * strongest first. What is left out is worked out once, whichever causes are then asked about.
 */
export function evidence(model: Model, { observations, repairs }: Knowledge): (cause: string) => readonly Moved[] {
  const whole = posterior(model, { observations, repairs });
  const without = observations
    .filter((one) => says(model, one))
    .map((one) => {
      const rest = observations.filter((other: Observation) => other !== one);
      return { one, believed: posterior(model, { observations: rest, repairs }) };
    });
  return (cause) => {
    const bits = oddsBits(shareOf(model, whole, cause));
    return without
      .map(({ one, believed }) => ({
        step: one.step,
        outcome: one.outcome,
        bits: bits - oddsBits(shareOf(model, believed, cause)),
      }))
      .toSorted((a, b) => Math.abs(b.bits) - Math.abs(a.bits));
  };
}
