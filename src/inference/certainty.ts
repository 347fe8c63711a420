import { MISFIT_CHANCE } from './doubt.ts';
import {
  chanceOf,
  groupsOf,
  type Knowledge,
  type Observation,
  type Posterior,
  posterior,
  ranked,
  shareOf,
} from './posterior.ts';
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
/** A cause that this build has so seldom, or so much more seldom than bikes do, is no other that could have given it. */
const COULD_BE_SHARE = 0.003;
const OF_BUILD_RATIO = 0.1;

/** A cause that all other answers together are so many to one against is ruled out by them. Judged. */
const RULES_OUT_ODDS = 20;

/**
 * The other causes of this build that give an outcome nearly as often as the cause does: none where it points at it.
 * Undefined where it is no sign of the cause at all: it seldom gives it, or a sound bike does as well, unless the cause is
 * what a sound bike of the build does. What only rules others out proves nothing, since nobody knows all others. A cause
 * with which the step makes no sense gives none of its outcomes.
 */
function signs(model: Model, { observations }: Knowledge, believed: Posterior, cause: string, byDesign: boolean) {
  const ofBuild = observations.filter(({ trust }) => trust === 'build');
  const onBuild = posterior(model, { observations: ofBuild, repairs: [] });
  const onAny = posterior(model, { observations: [], repairs: [] });
  const others = ranked(model, onBuild).filter(
    (other) =>
      other.cause !== cause &&
      !isUnthought(other.cause) &&
      other.shareRatio >= Math.max(COULD_BE_SHARE, OF_BUILD_RATIO * shareOf(model, onAny, other.cause)),
  );
  const chance = (other: string, step: string, outcome: string) =>
    model.steps.get(step)?.looked.has(other) === false ? 0 : (chanceOf(model, onBuild, other, step, outcome) ?? 0);
  const rivals = (step: string, outcome: string): readonly string[] | undefined => {
    const own = chanceOf(model, believed, cause, step, outcome);
    if (own === undefined || own < POINTS_CHANCE) return undefined;
    const limit = own / POINTS_RATIO;
    if (!byDesign && chance(UNTHOUGHT_SOUND, step, outcome) >= limit) return undefined;
    return others.filter((other) => chance(other.cause, step, outcome) >= limit).map((other) => other.cause);
  };
  const oddsAgainst = (other: string, { step, outcome, trust }: Observation): number =>
    trust === 'seen' && model.steps.get(step)?.looked.has(other) === true
      ? (chanceOf(model, believed, cause, step, outcome) ?? 0) / Math.max(1e-9, chance(other, step, outcome))
      : 1;
  const rulesOut = (other: string, among: readonly Observation[]): boolean =>
    among.reduce((odds, one) => odds * oddsAgainst(other, one), 1) >= RULES_OUT_ODDS;
  return { rivals, rulesOut };
}

/** A sign of so many others besides is too common to be made a witness by ruling them out: who knows all who give it. */
const MOST_RIVALS = 2;

/**
 * How many answers speak for it that do not fail together: those that point at it, and signs of it and of few others, all
 * of whom the other answers rule out. Where none points at it, only one of a particular thing does.
 */
function witnessesOf(model: Model, known: Knowledge, believed: Posterior, cause: string, byDesign: boolean): number {
  const { rivals, rulesOut } = signs(model, known, believed, cause, byDesign);
  const signsSeen = known.observations.flatMap((one) => {
    const shared = one.trust === 'seen' ? rivals(one.step, one.outcome) : undefined;
    if (!shared || shared.length > (one.ledOn ? 0 : MOST_RIVALS)) return [];
    const others = known.observations.filter((other) => other !== one);
    return shared.every((rival) => rulesOut(rival, others)) ? [{ one, points: shared.length === 0 }] : [];
  });
  if (signsSeen.some(({ points }) => points)) return groupsOf(signsSeen.map(({ one }) => one)).length;
  return signsSeen.some(({ one }) => one.particular) ? 1 : 0;
}

/**
 * The steps whose answer was seen and the cause hardly ever gives. One that nobody here is known to give says nothing for
 * or against anybody, and it is no proof of having understood either.
 */
export const oddFor = (
  model: Model,
  { observations }: Knowledge,
  believed: Posterior,
  cause: string,
): readonly string[] =>
  observations
    .filter(({ step, outcome, trust }) => {
      if (trust !== 'seen' || !model.steps.has(step)) return false;
      return (chanceOf(model, believed, cause, step, outcome) ?? 0) < MISFIT_CHANCE;
    })
    .map(({ step }) => step);

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

/** Whether one of these steps came out as it mostly does with the cause. */
const cameOutWith = (
  model: Model,
  { observations }: Knowledge,
  believed: Posterior,
  cause: string,
  steps: readonly string[],
): boolean =>
  observations.some(
    ({ step, outcome, trust }) =>
      trust === 'seen' &&
      steps.includes(step) &&
      (chanceOf(model, believed, cause, step, outcome) ?? 0) >= POINTS_CHANCE,
  );

/**
 * How sure the likeliest cause is. An answer on which all hangs and that nobody confirmed leaves it at "likely", and so
 * does a case that no single cause explains. Where a wrong verdict is dear, more than one witness has to point at it.
 */
export function certaintyOf(
  model: Model,
  known: Knowledge,
  believed: Posterior,
  { hangsOnOne, unexplained = false, witnesses = 1, byDesign = false, provedBy }: Judged,
): Certainty {
  const [first] = ranked(model, believed);
  if (!first || isUnthought(first.cause) || first.shareRatio < LIKELY_SHARE) return 'short list';
  if (hangsOnOne || unexplained) return 'likely';
  const smaller = first.shareRatio / PRIOR_SMALLER;
  const stands = smaller / (smaller + 1 - first.shareRatio) >= STANDS_SHARE;
  return stands &&
    witnessesOf(model, known, believed, first.cause, byDesign) >= witnesses &&
    (!provedBy || cameOutWith(model, known, believed, first.cause, provedBy)) &&
    oddFor(model, known, believed, first.cause).length === 0 &&
    standsWithoutAnyGroup(model, known, first.cause)
    ? 'proved'
    : 'likely';
}

/** What a verdict is judged by, besides the shares. */
export interface Judged {
  /** An answer on which all hangs was not given a second time. */
  readonly hangsOnOne: boolean;
  readonly unexplained?: boolean;
  /** How many have to speak for it. */
  readonly witnesses?: number;
  /** The one that leads is what a sound bike does. */
  readonly byDesign?: boolean;
  /** Steps of which one has to have come out as it mostly does with the cause, however few others are left. */
  readonly provedBy?: readonly string[];
}

/** The steps, of those named, that would prove the cause if they came out as it mostly lets them. */
export function wouldProve(
  model: Model,
  known: Knowledge,
  believed: Posterior,
  cause: string,
  steps: readonly Pick<Observation, 'step' | 'group'>[],
  judged: Omit<Judged, 'hangsOnOne'> = {},
): readonly string[] {
  const mostly = (step: string) =>
    [...(model.steps.get(step)?.outcomes.keys() ?? [])].toSorted(
      (a, b) => (chanceOf(model, believed, cause, step, b) ?? 0) - (chanceOf(model, believed, cause, step, a) ?? 0),
    )[0];
  return steps
    .filter(({ step, group }) => {
      const outcome = mostly(step);
      if (outcome === undefined) return false;
      const then = {
        ...known,
        observations: [...known.observations, { step, outcome, group, trust: 'seen' as const }],
      };
      return certaintyOf(model, then, posterior(model, then), { ...judged, hangsOnOne: false }) === 'proved';
    })
    .map(({ step }) => step);
}
