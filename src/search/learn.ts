import type { Document } from './document.ts';
import type { GivenFact } from './facts.ts';

/** What somebody typed, and the place that they meant. */
export interface Heard {
  readonly words: string;
  readonly is: string;
}

/** How a text is read before anything was learnt. */
export interface Reading {
  /** How well each document fits, by its number. */
  readonly fits: Float64Array;
  /** The words to learn by, with their strength. */
  readonly words: readonly (readonly [string, number])[];
  /** What the words give as answers. */
  readonly given: readonly GivenFact[];
}

/** What is added to the fit of a place for a word: numbers of documents, each with its addition in thirds. */
export type Learnt = Readonly<Record<string, readonly (readonly [number, number])[]>>;

/** How steeply a better fit makes a place more likely. This and the next by tenfold cross-validation on what was heard. */
const STEEPNESS = 0.5;
/** How strongly what is learnt is held near nothing. */
const RESTRAINT = 0.003;
/** So few that rare words do not learn a phrase by heart: with twice as many, phrases that were not heard fare worse. */
const ROUNDS = 16;
const RATE = 0.3;
/** How much slower each round learns than the first: so late ones settle, and fewer weights are left to send. */
const SLOWER = 0.2;
/** Of neighbours in the file, which are alike, so many others come in between. */
const STRIDE = 97;
/** What was heard less often tells of one phrase, not of a word. */
const LEAST_HEARD = 14;
/** What speaks less for a place, or less against it, in thirds, is left out of the file. */
const LEAST_FOR = 5;
const LEAST_AGAINST = 6;
const thirdsOf = (weight: number): number => Math.round((3 * weight) / STEEPNESS);
const isTelling = (thirds: number): boolean => thirds >= LEAST_FOR || thirds <= -LEAST_AGAINST;

/**
 * Learns from what was heard how much a word speaks for a place, beside what the place is called: multinomial logistic
 * regression by stochastic gradient descent with weight decay (Bishop, Pattern Recognition and Machine Learning, 4.3.4).
 * The words of the documents stay as the offset, so a word that nobody was heard to say keeps its meaning.
 */
export function learn(
  heard: readonly Heard[],
  documents: readonly Document[],
  read: (query: string) => Reading,
): Learnt {
  const placeOf = new Map(documents.map(({ id }, i) => [id, i]));
  const cases = heard.map(({ words: query, is }) => {
    const { fits, words } = read(query);
    const meant = placeOf.get(is);
    if (meant === undefined)
      throw new Error(`content/words/heard.txt: “${query}” is said to mean ${is}, which is no place.`);
    return { offsets: [...fits].map((fit) => STEEPNESS * fit), words, meant };
  });
  // What is alike was mostly heard together, and would be learnt last: they take turns.
  const mixed = Array.from({ length: STRIDE }, (_, from) => cases.filter((_, at) => at % STRIDE === from)).flat();
  const times = new Map<string, number>();
  for (const { words } of cases) for (const [word] of words) times.set(word, (times.get(word) ?? 0) + 1);
  const added = new Map<string, Float64Array>();
  for (const [word, count] of times) if (count >= LEAST_HEARD) added.set(word, new Float64Array(documents.length));
  const teach = (times: number, only: (weight: number) => boolean) => {
    for (let round = 0; round < times; round++) {
      const rate = RATE / (1 + SLOWER * round);
      for (const { offsets, words, meant } of mixed) {
        const own = words.flatMap(([word, strength]) => {
          const weights = added.get(word);
          return weights ? [{ weights, strength }] : [];
        });
        const fits = offsets.map((offset, i) =>
          own.reduce((so, { weights, strength }) => so + strength * (weights[i] ?? 0), offset),
        );
        const most = Math.max(...fits);
        const odds = fits.map((fit) => Math.exp(fit - most));
        const all = odds.reduce((so, one) => so + one, 0);
        for (const { weights, strength } of own)
          for (const [i, weight] of weights.entries()) {
            const missing = (i === meant ? 1 : 0) - (odds[i] ?? 0) / all;
            if (only(weight)) weights[i] = weight + rate * (strength * missing - RESTRAINT * weight);
          }
      }
    }
  };
  teach(ROUNDS, () => true);
  // What says little is left out, and the rest learns to do without it.
  for (const weights of added.values())
    for (const [i, weight] of weights.entries()) if (!isTelling(thirdsOf(weight))) weights[i] = 0;
  teach(ROUNDS / 2, (weight) => weight !== 0);
  return Object.fromEntries(
    [...added].flatMap(([word, weights]) => {
      const told = [...weights].flatMap((weight, i) => {
        const thirds = thirdsOf(weight);
        return thirds === 0 ? [] : [[i, thirds] as const];
      });
      return told.length > 0 ? [[word, told] as const] : [];
    }),
  );
}
