import { type Posterior, ranked } from './posterior.ts';
import { isUnthought, type Model } from './table.ts';

/** What a step can tell apart now: the causes that mostly give one outcome, against those that give another. */
export interface Separates {
  readonly outcome: string;
  readonly causes: readonly string[];
}

/** A cause less likely than this is not worth a word in a question's reason. */
const WORTH_NAMING_SHARE = 0.03;
const MOST_NAMED = 6;

/** The likeliest outcome of a step for each of the leading causes, gathered by outcome, the likeliest group first. */
export function separates(model: Model, believed: Posterior, step: string): readonly Separates[] {
  const chances = model.steps.get(step);
  if (!chances) return [];
  const names = [...chances.outcomes.keys()];
  const leading = ranked(model, believed)
    .filter(({ cause, shareRatio }) => !isUnthought(cause) && shareRatio >= WORTH_NAMING_SHARE)
    .slice(0, MOST_NAMED);
  const outcomeOf = (cause: string): string => {
    const c = model.causes.indexOf(cause);
    const sums = names.map((_, o) =>
      (chances.byRow[o] as Float64Array).reduce(
        (sum, chance, r) => (model.causeOf[r] === c ? sum + chance * (believed.rows[r] as number) : sum),
        0,
      ),
    );
    return names[sums.indexOf(Math.max(...sums))] ?? '';
  };
  return [...Map.groupBy(leading, ({ cause }) => outcomeOf(cause))].map(([outcome, causes]) => ({
    outcome,
    causes: causes.map(({ cause }) => cause),
  }));
}
