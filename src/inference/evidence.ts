import { MISFIT_CHANCE } from './doubt.ts';
import {
  chanceOf,
  chanceOfOthers,
  type Knowledge,
  type Observation,
  type Posterior,
  posterior,
  says,
  shareOf,
} from './posterior.ts';
import type { Model } from './table.ts';

/** How far one answer moved the odds of a cause: bits above nought raise them. */
export interface Moved {
  readonly step: string;
  readonly outcome: string;
  readonly bits: number;
  /** What can be said of it by itself: it speaks for the cause, against it, or is what the cause does not explain. */
  readonly speaks: 'for' | 'against' | 'misfit' | undefined;
}

const oddsBits = (share: number): number => Math.log2(Math.max(share, 1e-9) / Math.max(1 - share, 1e-9));

/** An outcome that everything else gives so many times more often speaks against a cause. Judged, as what points at one. */
const AGAINST_RATIO = 4;

/**
 * What each answer did for or against a cause: the odds with all answers over those without this one, in bits. The
 * strongest first. What is left out is worked out once, whichever causes are then asked about.
 *
 * Odds also rise by an answer that the cause hardly ever gives, where all others give it more seldom still, or where a
 * second cause gives it: such an answer speaks for nothing, and it was said not to fit. And they fall a little by what
 * the cause mostly gives: that speaks against nothing. `single` is the model in which no two causes are thought of at once.
 */
export function evidence(
  model: Model,
  { observations, repairs }: Knowledge,
  single: Model = model,
): (cause: string) => readonly Moved[] {
  const whole = posterior(model, { observations, repairs });
  const alone = single === model ? whole : posterior(single, { observations, repairs });
  const without = observations
    .filter((one) => says(model, one))
    .map((one) => {
      const rest = observations.filter((other: Observation) => other !== one);
      return { one, believed: posterior(model, { observations: rest, repairs }) };
    });
  const speaks = (cause: string, one: Observation, rest: Posterior, bits: number): Moved['speaks'] => {
    const given = (of: Model, believed: Posterior) => chanceOf(of, believed, cause, one.step, one.outcome) ?? 0;
    const own = given(model, rest);
    // How a bike is built is nothing that has to be explained, and nobody is asked twice for what he tells of the past.
    if (
      one.trust !== 'build' &&
      bits < 0 &&
      AGAINST_RATIO * own <= (chanceOfOthers(model, rest, cause, one.step, one.outcome) ?? 0)
    )
      return 'against';
    if (given(model, whole) < MISFIT_CHANCE || given(single, alone) < MISFIT_CHANCE)
      return one.trust === 'seen' ? 'misfit' : undefined;
    return bits > 0 ? 'for' : undefined;
  };
  return (cause) => {
    const bits = oddsBits(shareOf(model, whole, cause));
    return without
      .map(({ one, believed }) => {
        const moved = bits - oddsBits(shareOf(model, believed, cause));
        return { step: one.step, outcome: one.outcome, bits: moved, speaks: speaks(cause, one, believed, moved) };
      })
      .toSorted((a, b) => Math.abs(b.bits) - Math.abs(a.bits));
  };
}
