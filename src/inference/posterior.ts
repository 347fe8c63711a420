import type { Chances, Model } from './table.ts';

/** One answer, as the reckoning sees it. */
export interface Observation {
  readonly step: string;
  readonly outcome: string;
  /** Answers of one group were taken under the same condition, by the same ear or with the same range: they fail together. */
  readonly group: string;
  /** Seen now, told of the past, or said of the build. */
  readonly trust: 'seen' | 'told' | 'build';
  /**
   * Whether it is of one thing: looked at, or compared while something was done and undone. What a meter reads and what an
   * ear only describes may come from anything along the way.
   */
  readonly particular?: boolean;
  /** Whether it only led to another that was answered, and says nothing besides that one. */
  readonly ledOn?: boolean;
  /** Whether it was given a second time and stayed. */
  readonly confirmed?: boolean;
}

/**
 * A repair that was done, how likely it is that it left its cause in place, and what became of the complaint; or a check
 * that said before any repair that it is not this cause, and how often such a check is wrong.
 */
export interface Repaired {
  readonly cause: string;
  readonly failsRatio: number;
  readonly result: 'still' | 'better' | 'not-it';
}

export interface Knowledge {
  /** Each step once: what it is worth that it was given again is said by `confirmed` alone. */
  readonly observations: readonly Observation[];
  readonly repairs: readonly Repaired[];
}

/** What is believed: a share for each row, and their sum for each cause. */
export interface Posterior {
  readonly rows: Float64Array;
  readonly causes: Float64Array;
  /** Of the answers, before they are set against each other: how well the whole table explains them. */
  readonly evidence: number;
}

/** How often answers are wrong. */
export interface Slips {
  /** One careful answer, by itself. */
  readonly alone: number;
  /** All that was taken under one condition. */
  readonly together: number;
  readonly told: number;
  readonly build: number;
}
/** Judged. */
export const SLIPS: Slips = { alone: 0.01, together: 0.01, told: 0.05, build: 0.03 };
/** All of the past together moves odds by no more than this. Judged. */
const PAST_MOST_ODDS = 10;

const chancesOf = (model: Model, { step, outcome }: Observation): [Chances, number] | undefined => {
  const chances = model.steps.get(step);
  const o = chances?.outcomes.get(outcome);
  // An outcome that no cause is known to give says nothing about any of them.
  return chances === undefined || o === undefined || (chances.general[o] as number) <= 0 ? undefined : [chances, o];
};

/** Whether the table has anything to say about an answer. */
export const says = (model: Model, observation: Observation): boolean => chancesOf(model, observation) !== undefined;

/** How likely each row makes the answers of one group, all of which the table knows, slips included. */
function likelihoodOf(model: Model, group: readonly Observation[], slips: Slips, of: Float64Array): void {
  let slipped = 1;
  of.fill(1);
  for (const observation of group) {
    const [chances, o] = chancesOf(model, observation) as [Chances, number];
    const byRow = chances.byRow[o] as Float64Array;
    const slip = chances.slip[o] as number;
    const halved = observation.confirmed ? 0.5 : 1;
    if (observation.trust === 'build') {
      const general = chances.general[o] as number;
      const wrong = slips.build * halved;
      for (let r = 0; r < of.length; r++)
        of[r] = (of[r] as number) * ((1 - wrong) * (byRow[r] as number) + wrong * general);
    } else {
      const wrong = (observation.trust === 'told' ? slips.told : slips.alone) * halved;
      for (let r = 0; r < of.length; r++)
        of[r] = (of[r] as number) * ((1 - wrong) * (byRow[r] as number) + wrong * slip);
    }
    slipped *= slip;
  }
  if (group[0]?.trust === 'build') return;
  if (group[0]?.trust === 'told') {
    const most = of.reduce((so, one) => Math.max(so, one), 0);
    for (let r = 0; r < of.length; r++) of[r] = Math.max(of[r] as number, most / PAST_MOST_ODDS);
    return;
  }
  const together = slips.together * (group.every(({ confirmed }) => confirmed) ? 0.5 : 1);
  for (let r = 0; r < of.length; r++) of[r] = (1 - together) * (of[r] as number) + together * slipped;
}

const remembered = new WeakMap<Model, Map<string, Float64Array>>();
/** So many groups of answers are remembered of a table before they are all forgotten. */
const MOST_REMEMBERED = 4000;

/**
 * The same, remembered for a table: one decision asks what would be believed without each answer in turn, and the next
 * decision has all answers of this one and another.
 */
function rememberedLikelihood(model: Model, group: readonly Observation[], slips: Slips): Float64Array {
  const known = remembered.get(model) ?? new Map<string, Float64Array>();
  remembered.set(model, known);
  let key = `${group[0]?.trust} ${slips.alone} ${slips.together} ${slips.told} ${slips.build}`;
  for (const { step, outcome, confirmed } of group) key += ` ${step}=${outcome}${confirmed ? '!' : ''}`;
  const before = known.get(key);
  if (before) return before;
  if (known.size >= MOST_REMEMBERED) known.clear();
  const of = new Float64Array(model.prior.length);
  likelihoodOf(model, group, slips, of);
  known.set(key, of);
  return of;
}

/** Answers sorted into those that fail together. What is said of the build stands for itself, the past is one group. */
export const groupsOf = (observations: readonly Observation[]): readonly (readonly Observation[])[] => [
  ...Map.groupBy(observations, ({ trust, group, step }) =>
    trust === 'build' ? `build ${step}` : trust === 'told' ? 'told' : `seen ${group}`,
  ).values(),
];

/**
 * What is believed after all answers and repairs, whatever order they came in: Bayes' rule over the rows of the table,
 * with slips. Nothing is ever impossible.
 */
export function posterior(model: Model, { observations, repairs }: Knowledge, slips: Slips = SLIPS): Posterior {
  const rows = Float64Array.from(model.prior);
  // An answer of which the table says nothing must not make the others of its group look less confirmed.
  for (const group of groupsOf(observations.filter((one) => says(model, one)))) {
    const of = rememberedLikelihood(model, group, slips);
    for (let r = 0; r < rows.length; r++) rows[r] = (rows[r] as number) * (of[r] as number);
  }
  for (const { cause, failsRatio } of repairs) {
    const c = model.causes.indexOf(cause);
    for (let r = 0; r < rows.length; r++) if (model.causeOf[r] === c) rows[r] = (rows[r] as number) * failsRatio;
  }
  let evidence = 0;
  for (const share of rows) evidence += share;
  const causes = new Float64Array(model.causes.length);
  for (let r = 0; r < rows.length; r++) {
    const share = evidence > 0 ? (rows[r] as number) / evidence : (model.prior[r] as number);
    rows[r] = share;
    const c = model.causeOf[r] as number;
    causes[c] = (causes[c] as number) + share;
  }
  return { rows, causes, evidence };
}

export interface Share {
  readonly cause: string;
  readonly shareRatio: number;
}

/** All causes, the likeliest first. */
export const ranked = (model: Model, { causes }: Posterior): readonly Share[] =>
  model.causes
    .map((cause, c) => ({ cause, shareRatio: causes[c] as number }))
    .toSorted((a, b) => b.shareRatio - a.shareRatio);

export const shareOf = (model: Model, { causes }: Posterior, cause: string): number =>
  causes[model.causes.indexOf(cause)] ?? 0;

/** How likely the rows of a cause make an outcome, as they are believed now, or all rows but those. */
function chanceOver(
  model: Model,
  believed: Posterior,
  cause: string,
  step: string,
  outcome: string,
  isOfOthers: boolean,
): number | undefined {
  const found = chancesOf(model, { step, outcome, group: '', trust: 'seen' });
  if (!found) return undefined;
  const byRow = found[0].byRow[found[1]] as Float64Array;
  const c = model.causes.indexOf(cause);
  let [sum, total] = [0, 0];
  for (let r = 0; r < byRow.length; r++) {
    if ((model.causeOf[r] === c) === isOfOthers) continue;
    const weight = (believed.rows[r] as number) + 1e-12 * (model.prior[r] as number);
    sum += weight * (byRow[r] as number);
    total += weight;
  }
  return total > 0 ? sum / total : undefined;
}

/** How likely a cause makes an outcome, over its rows as they are believed now. Undefined where the table says nothing. */
export const chanceOf = (model: Model, believed: Posterior, cause: string, step: string, outcome: string) =>
  chanceOver(model, believed, cause, step, outcome, false);

/** How likely everything but a cause makes an outcome. */
export const chanceOfOthers = (model: Model, believed: Posterior, cause: string, step: string, outcome: string) =>
  chanceOver(model, believed, cause, step, outcome, true);

/** The outcome that a step most likely gives now, or undefined where the table does not know it. */
export function likeliestOutcome(model: Model, { rows }: Posterior, step: string): string | undefined {
  const chances = model.steps.get(step);
  if (!chances) return undefined;
  let [best, most]: [string | undefined, number] = [undefined, 0];
  for (const [name, o] of chances.outcomes) {
    const byRow = chances.byRow[o] as Float64Array;
    let share = 0;
    for (let r = 0; r < rows.length; r++) share += (byRow[r] as number) * (rows[r] as number);
    if (share > most) [best, most] = [name, share];
  }
  return best;
}
