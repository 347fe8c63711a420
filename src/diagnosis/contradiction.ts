import { chanceOf, type Known, oddsOf, type Signs, telling } from './signs.ts';

/** How often a careful answer is wrong: one in thirty. An estimate. */
export const WRONG_ANSWER = 1 / 30;
/** How often a second fault of the same complaint is there as well: one bike in twenty. An estimate. */
export const SECOND_FAULT = 1 / 20;
/** An answer is worth naming when its being wrong explains things at least a fifth as well as the best. */
const WORTH_NAMING_RATIO = 1 / 5;

/** What a suspect list needs besides: the minutes of each step, and what a sound bike shows. */
export interface Bench {
  minutesOf(step: string): number;
  /** The outcome of a sound bike, where it is known. Of two faults together it takes both to leave it as it is. */
  readonly sound: Readonly<Record<string, string>>;
  /** Answers that were given again and stayed: they are taken as right. */
  readonly checked?: ReadonlySet<string>;
}

export interface Contradiction {
  /** The step whose answer is to be checked again. */
  readonly step: string;
  /** How many times likelier one wrong answer is than the best explanation without; Infinity when there is none. */
  readonly timesLikelier: number;
}

interface Explained {
  readonly prior: number;
  /** By answer, in the order they were given. */
  readonly chances: readonly number[];
}

const product = (values: readonly number[], but = -1): number =>
  values.reduce((so, value, i) => (i === but ? so : so * value), 1);

/** Two faults at once: what is odd of either shows, and what is sound shows only if both leave it so. */
function together(a: Explained, b: Explained, isSound: readonly boolean[]): number {
  let chance = SECOND_FAULT * a.prior * b.prior;
  for (const [i, sound] of isSound.entries()) {
    const [one, other] = [a.chances[i] as number, b.chances[i] as number];
    chance *= sound ? one * other : Math.max(one, other);
    if (chance === 0) return 0;
  }
  return chance;
}

/**
 * The answer that cannot stand with the others, or null. It is named when one wrong answer is likelier than the best
 * single fault, or pair of faults, that explains all answers; among the answers that restore sense it is the one whose
 * check costs least.
 */
export function contradiction(suspects: readonly Signs[], outcomes: Known, bench: Bench): Contradiction | null {
  // What nobody here would show speaks of a cause that is not among them, such as a flat battery, and not of a slip.
  const answers = [...telling(outcomes)].filter(([step, outcome]) =>
    suspects.some(({ shows }) => shows[step]?.[outcome]),
  );
  const total = suspects.reduce((sum, suspect) => sum + oddsOf(suspect, outcomes), 0);
  const explained = suspects.map(
    (suspect): Explained => ({
      prior: oddsOf(suspect, outcomes) / total,
      chances: answers.map(([step, outcome]) => chanceOf(suspect, step, outcome)),
    }),
  );
  const isSound = answers.map(([step, outcome]) => bench.sound[step] === outcome);
  let allRight = Math.max(0, ...explained.map(({ prior, chances }) => prior * product(chances)));
  const wrong = answers.map(([step], i) =>
    bench.checked?.has(step)
      ? 0
      : WRONG_ANSWER * Math.max(0, ...explained.map(({ prior, chances }) => prior * product(chances, i))),
  );
  const likeliest = Math.max(0, ...wrong);
  if (likeliest <= allRight) return null;
  for (const [i, a] of explained.entries())
    for (const b of explained.slice(i + 1)) allRight = Math.max(allRight, together(a, b, isSound));
  if (likeliest <= allRight) return null;
  const [named] = answers
    .map(([step], i) => ({ step, chance: wrong[i] as number }))
    .filter(({ chance }) => chance > allRight && chance >= WORTH_NAMING_RATIO * likeliest)
    .toSorted((a, b) => bench.minutesOf(a.step) - bench.minutesOf(b.step) || b.chance - a.chance);
  return named ? { step: named.step, timesLikelier: likeliest / allRight } : null;
}
