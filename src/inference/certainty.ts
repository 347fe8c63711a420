import { chanceOf, groupsOf, type Knowledge, type Posterior, posterior, ranked, shareOf } from './posterior.ts';
import { isUnthought, type Model, UNTHOUGHT_SOUND } from './table.ts';

/** What a verdict says of itself. What each word is worth is counted in the proof. */
export type Certainty = 'proved' | 'likely' | 'short list';

const PROVED_SHARE = 0.95;
const LIKELY_SHARE = 0.6;
/** Without the answers of any one condition it must still lead by so much. */
const WITHOUT_A_GROUP_SHARE = 0.5;
/** It stands with its prior so many times smaller, which costs a share of nearly one next to nothing. */
const PRIOR_SMALLER = 5;
const STANDS_SHARE = 0.85;
/** An outcome that a sound bike shows less often than this, and the cause far more often, is something that was seen. */
const SOUND_SELDOM = 0.2;
const CAUSE_OFTEN = 3;

/** Whether anything was seen that a bike on which all reads sound does not show, and the cause does. */
function somethingSeen(model: Model, { observations }: Knowledge, believed: Posterior, cause: string): boolean {
  return observations.some(({ step, outcome, trust }) => {
    if (trust !== 'seen') return false;
    const sound = chanceOf(model, believed, UNTHOUGHT_SOUND, step, outcome);
    const own = chanceOf(model, believed, cause, step, outcome);
    return sound !== undefined && own !== undefined && sound < SOUND_SELDOM && own > CAUSE_OFTEN * sound;
  });
}

/**
 * Whether it leads by itself when everything that was taken under any one condition is left out. What was taken a second
 * time stays, and so does a cure that was undone and done again: that is proof.
 */
function standsWithoutAnyGroup(model: Model, { observations, repairs }: Knowledge, cause: string): boolean {
  const groups = groupsOf(observations);
  return groups.every((group) => {
    if (group[0]?.trust !== 'seen') return true;
    const rest = observations.filter((one) => one.confirmed || !group.includes(one));
    return shareOf(model, posterior(model, { observations: rest, repairs }), cause) >= WITHOUT_A_GROUP_SHARE;
  });
}

/** How sure the likeliest cause is. An answer on which all hangs and that nobody confirmed leaves it at "likely". */
export function certaintyOf(model: Model, known: Knowledge, believed: Posterior, hangsOnOne: boolean): Certainty {
  const [first] = ranked(model, believed);
  if (!first || isUnthought(first.cause) || first.shareRatio < LIKELY_SHARE) return 'short list';
  if (first.shareRatio < PROVED_SHARE || hangsOnOne) return 'likely';
  const smaller = first.shareRatio / PRIOR_SMALLER;
  const stands = smaller / (smaller + 1 - first.shareRatio) >= STANDS_SHARE;
  return stands &&
    somethingSeen(model, known, believed, first.cause) &&
    standsWithoutAnyGroup(model, known, first.cause)
    ? 'proved'
    : 'likely';
}
