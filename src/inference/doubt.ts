import {
  chanceOf,
  type Knowledge,
  type Observation,
  type Posterior,
  posterior,
  ranked,
  says,
  shareOf,
} from './posterior.ts';
import { isUnthought, type Model } from './table.ts';

/** An answer that the likeliest cause gives less often than this does not fit it. */
export const MISFIT_CHANCE = 0.05;
/** An answer without which the likeliest cause falls below this is one that all hangs on. */
const PIVOTAL_SHARE = 0.5;

export interface Doubt {
  readonly step: string;
  /** It does not fit what the others say, or all hangs on it. */
  readonly because: 'misfit' | 'pivotal';
}

const without = ({ observations, repairs }: Knowledge, one: Observation): Knowledge => ({
  observations: observations.filter((other) => other !== one),
  repairs,
});

/**
 * An outcome that a cause gives no more often than this is not what it would show: of left and right, which are alike, one
 * has a little more than half by chance.
 */
const MOSTLY_CHANCE = 2 / 3;

/**
 * What a cause mostly shows at a step, as all other answers leave it: with one speaker it is that of another corner than
 * with the next, and the mean of all corners is none. Undefined where no outcome has most of it.
 */
export function mostlyShows(
  model: Model,
  { observations, repairs }: Knowledge,
  cause: string,
  step: string,
): string | undefined {
  const rest = posterior(model, { observations: observations.filter((one) => one.step !== step), repairs });
  return [...(model.steps.get(step)?.outcomes.keys() ?? [])].find(
    (outcome) => (chanceOf(model, rest, cause, step, outcome) ?? 0) > MOSTLY_CHANCE,
  );
}

/**
 * The cause that an answer does not fit: the likeliest one; where that gives it because a second one is thought of, the
 * one that is the likeliest by itself.
 */
export function misfitOf(
  model: Model,
  single: Model,
  known: Knowledge,
  { step, outcome }: Observation,
): string | undefined {
  for (const one of [model, single]) {
    const believed = posterior(one, known);
    const [first] = ranked(one, believed).filter(({ cause }) => !isUnthought(cause));
    if (first && (chanceOf(one, believed, first.cause, step, outcome) ?? 1) < MISFIT_CHANCE) return first.cause;
  }
  return undefined;
}

/** The answers, of those named, without any one of which a cause would not lead by itself, the one it hangs on most first. */
export const hangsOn = (
  model: Model,
  known: Knowledge,
  cause: string,
  among: readonly Observation[] = known.observations,
): readonly Observation[] =>
  among
    .filter((one) => says(model, one))
    .map((one) => ({ one, share: shareOf(model, posterior(model, without(known, one)), cause) }))
    .filter(({ share }) => share < PIVOTAL_SHARE)
    .toSorted((a, b) => a.share - b.share)
    .map(({ one }) => one);

/**
 * The answers to be given once more before a verdict, the one that matters most first: those that the likeliest cause
 * hardly ever gives, then those without which it would not lead. What was confirmed is not doubted again.
 */
export function doubts(model: Model, known: Knowledge, believed: Posterior): readonly Doubt[] {
  const [first] = ranked(model, believed);
  if (!first) return [];
  // What is told of the past moves little, and asking again brings the same story.
  const open = known.observations.filter((one) => one.trust !== 'told' && !one.confirmed && says(model, one));
  const misfits = open
    .map((one) => ({ one, chance: chanceOf(model, believed, first.cause, one.step, one.outcome) ?? 1 }))
    .filter(({ chance }) => chance < MISFIT_CHANCE)
    .toSorted((a, b) => a.chance - b.chance)
    .map(({ one }): Doubt => ({ step: one.step, because: 'misfit' }));
  const seen = open.filter(({ trust }) => trust === 'seen');
  const pivotal = hangsOn(model, known, first.cause, seen).map(
    (one): Doubt => ({ step: one.step, because: 'pivotal' }),
  );
  return [...misfits, ...pivotal.filter(({ step }) => !misfits.some((misfit) => misfit.step === step))];
}
