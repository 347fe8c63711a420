import { chanceOf, groupsOf, type Knowledge, type Posterior, posterior, ranked, shareOf } from './posterior.ts';
import { isUnthought, type Model, UNTHOUGHT_SOUND } from './table.ts';

/** What a verdict says of itself. What each word is worth is counted in the proof. */
export type Certainty = 'proved' | 'likely' | 'short list';

const LIKELY_SHARE = 0.6;
/** Without the answers of any one condition it must still lead by so much. */
const WITHOUT_A_GROUP_SHARE = 0.5;
/** It stands with its prior so many times smaller: from a share of 0.966, which it then costs next to nothing. */
const PRIOR_SMALLER = 5;
const STANDS_SHARE = 0.85;
/** An outcome that the cause gives so many times more often than any other, or than a sound bike, points at it. Judged. */
const POINTS_RATIO = 4;
/** What the cause itself seldom gives points at nothing. */
const POINTS_CHANCE = 0.3;
/** A cause that this build has so seldom is no other that could have given it. */
const COULD_BE_SHARE = 0.003;

/**
 * Tells whether an outcome points at a cause: it gives it, and neither a sound bike nor any other cause of this build gives
 * it nearly as often. What only rules others out proves nothing, since nobody knows all others. A cause with which the
 * step makes no sense gives none of its outcomes.
 */
function pointer(model: Model, { observations }: Knowledge, believed: Posterior, cause: string) {
  const ofBuild = observations.filter(({ trust }) => trust === 'build');
  const onBuild = posterior(model, { observations: ofBuild, repairs: [] });
  const others = ranked(model, onBuild).filter(
    (other) => other.cause !== cause && !isUnthought(other.cause) && other.shareRatio >= COULD_BE_SHARE,
  );
  return (step: string, outcome: string): boolean => {
    const own = chanceOf(model, believed, cause, step, outcome);
    if (own === undefined || own < POINTS_CHANCE) return false;
    const limit = own / POINTS_RATIO;
    return (
      (chanceOf(model, onBuild, UNTHOUGHT_SOUND, step, outcome) ?? 0) < limit &&
      others.every(
        (other) =>
          model.steps.get(step)?.looked.has(other.cause) === false ||
          (chanceOf(model, onBuild, other.cause, step, outcome) ?? 0) < limit,
      )
    );
  };
}

/** How many answers point at it that do not fail together. */
function witnessesOf(model: Model, known: Knowledge, believed: Posterior, cause: string): number {
  const points = pointer(model, known, believed, cause);
  const groups = groupsOf(known.observations.filter(({ trust }) => trust === 'seen'));
  return groups.filter((group) => group.some(({ step, outcome }) => points(step, outcome))).length;
}

/** The steps, of those named, that would point at the cause if they came out as it mostly lets them. */
export function wouldPoint(
  model: Model,
  known: Knowledge,
  believed: Posterior,
  cause: string,
  steps: readonly string[],
): readonly string[] {
  const points = pointer(model, known, believed, cause);
  return steps.filter((step) => {
    const likeliest = [...(model.steps.get(step)?.outcomes.keys() ?? [])].toSorted(
      (a, b) => (chanceOf(model, believed, cause, step, b) ?? 0) - (chanceOf(model, believed, cause, step, a) ?? 0),
    )[0];
    return likeliest !== undefined && points(step, likeliest);
  });
}

/**
 * Whether the cause gives every answer that was seen at least now and then. One that nobody here is known to give says
 * nothing for or against anybody, and it is no proof of having understood either.
 */
const FITS_CHANCE = 0.05;
const everythingFits = (model: Model, { observations }: Knowledge, believed: Posterior, cause: string): boolean =>
  observations.every(({ step, outcome, trust }) => {
    if (trust !== 'seen' || !model.steps.has(step)) return true;
    return (chanceOf(model, believed, cause, step, outcome) ?? 0) >= FITS_CHANCE;
  });

/**
 * Whether it leads by itself when everything that was taken under any one condition is left out. A cure that was undone
 * and done again stays: that is proof by itself.
 */
function standsWithoutAnyGroup(model: Model, { observations, repairs }: Knowledge, cause: string): boolean {
  const groups = groupsOf(observations);
  return groups.every((group) => {
    if (group[0]?.trust !== 'seen') return true;
    const rest = observations.filter((one) => one.confirmed || !group.includes(one));
    return shareOf(model, posterior(model, { observations: rest, repairs }), cause) >= WITHOUT_A_GROUP_SHARE;
  });
}

/**
 * How sure the likeliest cause is. An answer on which all hangs and that nobody confirmed leaves it at "likely", and so
 * does a case that no single cause explains. Where a wrong verdict is dear, more than one witness has to point at it.
 */
export function certaintyOf(
  model: Model,
  known: Knowledge,
  believed: Posterior,
  {
    hangsOnOne,
    unexplained = false,
    witnesses = 1,
  }: { readonly hangsOnOne: boolean; readonly unexplained?: boolean; readonly witnesses?: number },
): Certainty {
  const [first] = ranked(model, believed);
  if (!first || isUnthought(first.cause) || first.shareRatio < LIKELY_SHARE) return 'short list';
  if (hangsOnOne || unexplained) return 'likely';
  const smaller = first.shareRatio / PRIOR_SMALLER;
  const stands = smaller / (smaller + 1 - first.shareRatio) >= STANDS_SHARE;
  return stands &&
    witnessesOf(model, known, believed, first.cause) >= witnesses &&
    everythingFits(model, known, believed, first.cause) &&
    standsWithoutAnyGroup(model, known, first.cause)
    ? 'proved'
    : 'likely';
}
