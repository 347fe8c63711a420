import { chanceOf, type Knowledge, type Posterior, posterior, ranked, says } from './posterior.ts';
import { type Chances, isUnthought, type Model, UNTHOUGHT_SOUND } from './table.ts';

/** How often a second fault of the same complaint is there as well: one bike in twenty. An estimate. */
const SECOND_FAULT = 1 / 20;
/** So many of the likeliest: what is one of two explains the answers badly by itself. */
const MOST_CAUSES = 16;
/** Answers that the best single cause explains worse than it should by so many bits ask for two. Judged. */
const SHORT_BITS = 2;
/** A pair that is less likely changes nothing, and every step that may be asked is weighed with each. */
const LEAST_PAIR_SHARE = 2e-4;

const rowFor = (model: Model, { rows }: Posterior, cause: string): number => {
  const c = model.causes.indexOf(cause);
  let best = -1;
  for (let r = 0; r < rows.length; r++)
    if (model.causeOf[r] === c && (best < 0 || (rows[r] as number) > (rows[best] as number))) best = r;
  return best;
};

/** The causes with a name, the likeliest first: whatever nobody thought of explains anything and is no part of a pair. */
const named = (model: Model, believed: Posterior) => ranked(model, believed).filter(({ cause }) => !isUnthought(cause));

/** By how many bits the answers are less likely under the likeliest cause than its own answers usually are. */
function shortBy(model: Model, { observations }: Knowledge, believed: Posterior): number {
  const [first] = named(model, believed);
  if (!first) return 0;
  let bits = 0;
  for (const one of observations) {
    if (one.trust !== 'seen' || !says(model, one)) continue;
    const names = [...(model.steps.get(one.step)?.outcomes.keys() ?? [])];
    const chances = names.map((name) => chanceOf(model, believed, first.cause, one.step, name) ?? 0);
    const usual = chances.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);
    bits += -Math.log2(Math.max(1e-6, chances[names.indexOf(one.outcome)] ?? 0)) - usual;
  }
  return bits;
}

/** Whether two causes at once are thought of: a repair made it better and not good, or no single one explains the answers. */
export const thinksOfPairs = (model: Model, known: Knowledge, believed: Posterior): boolean =>
  known.repairs.some(({ result }) => result === 'better') || shortBy(model, known, believed) > SHORT_BITS;

/**
 * What a step shows with two faults, from what it shows with each: what is tried on one of them takes away only that one.
 * Undefined where what is odd of either shows.
 */
export type Both = (one: string, other: string) => string;
export type BothOf = (step: string) => Both | undefined;

/** Writes the chances of a pair into a column, from those of its two. */
type Fill = (byRow: readonly Float64Array[], at: number, one: number, other: number) => void;
const add = (column: Float64Array | undefined, at: number, chance: number): void => {
  if (column) column[at] = (column[at] ?? 0) + chance;
};

/** How a bike is built does not hang on what is wrong with it. */
const asBuilt: Fill = (byRow, at, one) => {
  for (const own of byRow) own[at] = own[one] ?? 0;
};

/** What is shown by two that show what they do by themselves, where it is known what comes of any two outcomes. */
function byBoth({ outcomes }: Chances, both: Both): Fill {
  const shown = [...outcomes].flatMap(([one, o]) =>
    [...outcomes].map(([other, p]) => [o, p, outcomes.get(both(one, other)) ?? o] as const),
  );
  return (byRow, at, a, b) => {
    for (const [o, p, then] of shown) add(byRow[then], at, (byRow[o]?.[a] ?? 0) * (byRow[p]?.[b] ?? 0));
  };
}

/** What is odd of either shows, and what is sound shows only if both leave it so. */
const oddOfEither =
  (sound: number): Fill =>
  (byRow, at, a, b) => {
    let odd = 0;
    for (let o = 0; o < byRow.length; o++) {
      const own = byRow[o] as Float64Array;
      const one = own[a] as number;
      const other = own[b] as number;
      own[at] = o === sound ? one * other : 1 - (1 - one) * (1 - other);
      if (o !== sound) odd += own[at];
    }
    if (odd === 0) return;
    const scale = (1 - (byRow[sound]?.[at] ?? 0)) / odd;
    for (let o = 0; o < byRow.length; o++) {
      const own = byRow[o] as Float64Array;
      if (o !== sound) own[at] = (own[at] as number) * scale;
    }
  };

interface OfPair {
  readonly cause: string;
  readonly row: number;
}
type Pair = readonly [OfPair, OfPair];

/** The chances of a step with those of the pairs behind them. */
function widened(chances: Chances, pairs: readonly Pair[], fill: Fill): Chances {
  const byRow = chances.byRow.map((own) => {
    const all = new Float64Array(own.length + pairs.length);
    all.set(own);
    return all;
  });
  const rows = chances.byRow[0]?.length ?? 0;
  for (let i = 0; i < pairs.length; i++) {
    const pair = pairs[i];
    if (pair) fill(byRow, rows + i, pair[0].row, pair[1].row);
  }
  return { ...chances, byRow };
}

/**
 * Each pair of the likeliest causes, under the one that is likelier by itself: that is the one to be mended first. Once it
 * was, the pair goes under the other, which the repair left in place.
 */
function pairsOf(model: Model, known: Knowledge, believed: Posterior): readonly Pair[] {
  const leading = named(model, believed)
    .slice(0, MOST_CAUSES)
    .map(({ cause }) => ({ cause, row: rowFor(model, believed, cause) }));
  const mended = new Set(known.repairs.map(({ cause }) => cause));
  return leading.flatMap((a, i) =>
    leading
      .slice(i + 1)
      .map((b) => (mended.has(a.cause) && !mended.has(b.cause) ? ([b, a] as const) : ([a, b] as const))),
  );
}

/** How likely each cause is before anything is answered. */
function priorsOf({ causes, causeOf, prior }: Model): Float64Array {
  const of = new Float64Array(causes.length);
  for (let r = 0; r < prior.length; r++) {
    const c = causeOf[r] as number;
    of[c] = (of[c] as number) + (prior[r] as number);
  }
  return of;
}

/** The model with a row for each of these pairs, or for each of the likeliest causes. */
export function withPairs(
  model: Model,
  known: Knowledge,
  believed: Posterior,
  bothOf?: BothOf,
  pairs: readonly Pair[] = pairsOf(model, known, believed),
): Model {
  const priors = priorsOf(model);
  const at = (cause: string) => model.causes.indexOf(cause);
  const priorOf = (cause: string) => priors[at(cause)] ?? 0;
  const soundRow = rowFor(model, believed, UNTHOUGHT_SOUND);
  const build = new Set(known.observations.flatMap(({ trust, step }) => (trust === 'build' ? [step] : [])));
  const fillOf = (step: string, chances: Chances): Fill => {
    if (build.has(step)) return asBuilt;
    const both = bothOf?.(step);
    if (both) return byBoth(chances, both);
    const soundChances = chances.byRow.map((own) => own[soundRow] ?? 0);
    return oddOfEither(soundChances.indexOf(Math.max(...soundChances)));
  };
  // Of many steps only those that were answered or may be asked are looked at.
  const made = new Map<string, Chances>();
  const stepOf = (step: string): Chances | undefined => {
    const chances = made.has(step) ? undefined : model.steps.get(step);
    if (chances) made.set(step, widened(chances, pairs, fillOf(step, chances)));
    return made.get(step);
  };
  return {
    causes: model.causes,
    causeOf: [...model.causeOf, ...pairs.map(([a]) => at(a.cause))],
    prior: Float64Array.from([
      ...model.prior,
      ...pairs.map(([a, b]) => SECOND_FAULT * priorOf(a.cause) * priorOf(b.cause)),
    ]),
    steps: { get: stepOf, has: (step) => model.steps.has(step) },
  };
}

/** How likely it is that two causes at once explain the answers, in a model made wider by pairs. */
export const pairsShare = (single: Model, { rows }: Posterior): number =>
  rows.subarray(single.prior.length).reduce((sum, share) => sum + share, 0);

/** The model to reckon with, and what is believed in it: with pairs where they are thought of. */
export function reckoned(
  model: Model,
  known: Knowledge,
  bothOf?: BothOf,
): { readonly model: Model; readonly believed: Posterior } {
  const believed = posterior(model, known);
  if (!thinksOfPairs(model, known, believed)) return { model, believed };
  const pairs = pairsOf(model, known, believed);
  const { rows } = posterior(withPairs(model, known, believed, bothOf, pairs), known);
  const likely = pairs.filter((_, i) => (rows[model.prior.length + i] ?? 0) >= LEAST_PAIR_SHARE);
  const wider = withPairs(model, known, believed, bothOf, likely);
  return { model: wider, believed: posterior(wider, known) };
}
