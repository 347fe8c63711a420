import { chanceOf, type Knowledge, type Posterior, posterior, ranked, says } from './posterior.ts';
import { type Chances, isUnthought, type Model, UNTHOUGHT_SOUND } from './table.ts';

/** How often a second fault of the same complaint is there as well: one bike in twenty. An estimate. */
const SECOND_FAULT = 1 / 20;
/** So many of the likeliest: what is one of two explains the answers badly by itself. */
const MOST_CAUSES = 16;
/** Answers that the best single cause explains worse than it should by so many bits ask for two. Judged. */
const SHORT_BITS = 2;

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

/** What is shown by two that show what they do by themselves, where it is known what comes of any two outcomes. */
function combined({ outcomes, byRow }: Chances, a: number, b: number, both: Both): readonly number[] {
  const all = byRow.map(() => 0);
  for (const [one, o] of outcomes)
    for (const [other, p] of outcomes) {
      const shown = outcomes.get(both(one, other)) ?? o;
      const chance = ((byRow[o] as Float64Array)[a] as number) * ((byRow[p] as Float64Array)[b] as number);
      all[shown] = (all[shown] as number) + chance;
    }
  return all;
}

/** What is odd of either shows, and what is sound shows only if both leave it so. */
function together(chances: Chances, a: number, b: number, sound: number): readonly number[] {
  const all = chances.byRow.map((own, o) => {
    const [one, other] = [own[a] as number, own[b] as number];
    return o === sound ? one * other : 1 - (1 - one) * (1 - other);
  });
  const odd = all.reduce((sum, p, o) => (o === sound ? sum : sum + p), 0);
  const asSound = all[sound] ?? 0;
  return all.map((p, o) => (o === sound ? asSound : odd > 0 ? (p / odd) * (1 - asSound) : p));
}

/** The chances of an outcome with those of the pairs behind them. */
function extended(own: Float64Array, made: readonly (readonly number[])[], outcome: number): Float64Array {
  const all = new Float64Array(own.length + made.length);
  all.set(own);
  for (const [i, one] of made.entries()) all[own.length + i] = one[outcome] as number;
  return all;
}

/**
 * The model with a row for each pair of the likeliest causes. A pair goes under the name of the one that is likelier by
 * itself: that is the one to be mended first. Once it was, the pair goes under the other, which the repair left in place.
 */
export function withPairs(model: Model, known: Knowledge, believed: Posterior, bothOf?: BothOf): Model {
  const leading = named(model, believed)
    .slice(0, MOST_CAUSES)
    .map(({ cause }) => ({ cause, row: rowFor(model, believed, cause) }));
  const mended = new Set(known.repairs.map(({ cause }) => cause));
  const pairs = leading.flatMap((a, i) =>
    leading
      .slice(i + 1)
      .map((b) => (mended.has(a.cause) && !mended.has(b.cause) ? ([b, a] as const) : ([a, b] as const))),
  );
  const priorOf = (cause: string) => {
    const c = model.causes.indexOf(cause);
    return model.prior.reduce((sum, share, r) => (model.causeOf[r] === c ? sum + share : sum), 0);
  };
  const soundRow = rowFor(model, believed, UNTHOUGHT_SOUND);
  const build = new Set(known.observations.flatMap(({ trust, step }) => (trust === 'build' ? [step] : [])));
  const steps = new Map(
    [...model.steps].map(([step, chances]): [string, Chances] => {
      const soundChances = chances.byRow.map((own) => own[soundRow] ?? 0);
      const sound = soundChances.indexOf(Math.max(...soundChances));
      const both = bothOf?.(step);
      const made = pairs.map(([a, b]) => {
        if (build.has(step)) return chances.byRow.map((own) => own[a.row] as number);
        return both ? combined(chances, a.row, b.row, both) : together(chances, a.row, b.row, sound);
      });
      const byRow = chances.byRow.map((own, o) => extended(own, made, o));
      return [step, { ...chances, byRow }];
    }),
  );
  return {
    causes: model.causes,
    causeOf: [...model.causeOf, ...pairs.map(([a]) => model.causes.indexOf(a.cause))],
    prior: Float64Array.from([
      ...model.prior,
      ...pairs.map(([a, b]) => SECOND_FAULT * priorOf(a.cause) * priorOf(b.cause)),
    ]),
    steps,
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
  const wider = withPairs(model, known, believed, bothOf);
  return { model: wider, believed: posterior(wider, known) };
}
