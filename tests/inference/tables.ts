import type { Knowledge, Observation, Posterior, Repaired, Slips } from '../../src/inference/posterior.ts';
import { isUnthought, type Model, type Row, type Table, UNTHOUGHT_SOUND } from '../../src/inference/table.ts';

/** So many looks that smoothing takes less than a part in 10⁹ off a share. */
export const ENDLESS_LOOKS = 1e10;

/** Textbooks reckon with answers that are never wrong. */
export const NO_SLIPS: Slips = { alone: 0, together: 0, told: 0, build: 0 };

export const row = (cause: string, shows: Row['shows'], weight = 1, looks = ENDLESS_LOOKS): Row => ({
  cause,
  weight,
  looks,
  shows,
});

/** A reading that each cause gives for certain: the steps named are wrong, all others right. */
export const wrongAt = (steps: readonly string[], cause: string, wrong: readonly string[], weight = 1): Row =>
  row(cause, Object.fromEntries(steps.map((step) => [step, wrong.includes(step) ? [0, 1] : [1, 0]])), weight);

/** Causes by the steps that they put wrong, and a bike on which all is right. */
export const rightOrWrong = (steps: readonly string[], causes: Readonly<Record<string, readonly string[]>>): Table => ({
  steps: Object.fromEntries(steps.map((step) => [step, ['right', 'wrong']])),
  rows: [
    ...Object.entries(causes).map(([cause, wrong]) => wrongAt(steps, cause, wrong)),
    wrongAt(steps, UNTHOUGHT_SOUND, []),
  ],
});

/** An answer that was seen, under a condition of its own unless another is named. */
export const seen = (step: string, outcome: string, more: Partial<Observation> = {}): Observation => ({
  step,
  outcome,
  group: `for ${step}`,
  trust: 'seen',
  ...more,
});

export const knowing = (observations: readonly Observation[], repairs: readonly Repaired[] = []): Knowledge => ({
  observations,
  repairs,
});

export const NOTHING_KNOWN = knowing([]);

/** Given that it is one of the causes with a name: textbooks know of no others. */
export function amongNamed(model: Model, { rows, causes, evidence }: Posterior): Posterior {
  const named = model.causes.map((cause) => !isUnthought(cause));
  const total = causes.reduce((sum, share, c) => (named[c] ? sum + share : sum), 0);
  return {
    rows: rows.map((share, r) => (named[model.causeOf[r] as number] ? share / total : 0)),
    causes: causes.map((share, c) => (named[c] ? share / total : 0)),
    evidence,
  };
}
