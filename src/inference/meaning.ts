import { chanceOf, type Posterior, ranked } from './posterior.ts';
import { isUnthought, type Model } from './table.ts';

/** What an outcome would make of the causes that are likely now. */
export interface Meaning {
  readonly outcome: string;
  /** How often it would be seen now. */
  readonly chance: number;
  /** The cause that it would make likelier than any other, and what its share would go from and to. */
  readonly raises: { readonly cause: string; readonly from: number; readonly to: number } | undefined;
}

/** Below this nobody would notice that a share had moved. */
const MOVES_SHARE = 0.02;

/**
 * What each outcome of a step would mean now, by Bayes’ rule: the share of a cause goes from s to s·P(o|c)/P(o). The
 * likeliest outcome comes first. Empty where the table has no such step.
 */
export function meaningsOf(model: Model, believed: Posterior, step: string): readonly Meaning[] {
  const shares = ranked(model, believed);
  const outcomes = [...(model.steps.get(step)?.outcomes.keys() ?? [])];
  return outcomes
    .map((outcome): Meaning => {
      const joint = shares.map(({ cause, shareRatio }) => ({
        cause,
        from: shareRatio,
        both: shareRatio * (chanceOf(model, believed, cause, step, outcome) ?? 0),
      }));
      const chance = joint.reduce((sum, { both }) => sum + both, 0);
      const [most] = joint
        .filter(({ cause }) => chance > 0 && !isUnthought(cause))
        .map(({ cause, from, both }) => ({ cause, from, to: both / chance }))
        .toSorted((a, b) => b.to - b.from - (a.to - a.from));
      return { outcome, chance, raises: most && most.to - most.from >= MOVES_SHARE ? most : undefined };
    })
    .toSorted((a, b) => b.chance - a.chance);
}
