import Fuse from 'fuse.js/basic';
import { type SameWords, stemOf } from './same-words.ts';
import { slipsBetween } from './slips.ts';
import { soundOf } from './sound-key.ts';

/** The known words that a typed one may be, best first, each with how sure that is. */
export type Meant = readonly (readonly [word: string, sure: number])[];

/** How sure it is that a typed word is the one that it begins, or sounds like, or is a slip or two away from. */
const BEGUN = 0.8;
export const SOUNDS_ALIKE = 0.85;
const MISTYPED = 0.8;
/** A shorter word is looked up only as it is. */
const LEAST_LETTERS = 3;
/** In a word of so few letters a vowel is as telling as a consonant. */
const SHORT = 4;
/** One slip for so many letters is forgiven. */
const LETTERS_A_SLIP = 3;
/** Letters that a fuzzy match may be off by, as the library counts it. */
const FUZZY = 0.4;

/**
 * Looks typed words up among those that are known: as they are, else by what they sound like or begin, else by what they
 * come close to. What was looked up once is kept, so that a key costs no more than the word that is being typed.
 */
export function wordLookup(all: readonly string[], isKnown: (word: string) => boolean, { oneFor }: SameWords) {
  const byBegin = Map.groupBy(all, (word) => word.charAt(0));
  const bySound = Map.groupBy(all, soundOf);
  const alike = (typed: string) => {
    const words = bySound.get(soundOf(typed)) ?? bySound.get(soundOf(stemOf(typed))) ?? [];
    // In a short word the vowel is half of it: “hat” is no “hot”.
    return typed.length > SHORT ? words : words.filter((word) => [...typed].every((letter) => word.includes(letter)));
  };

  /** The words that are the fewest slips away, if those are few enough. */
  const nearest = (typed: string, words: readonly string[], most: number): readonly string[] => {
    const slips = words.map((word) =>
      Math.abs(word.length - typed.length) > most ? Infinity : slipsBetween(typed, word),
    );
    const least = Math.min(most, ...slips);
    return words.filter((_, i) => slips[i] === least);
  };
  const lookUp = (typed: string): Meant => {
    if (isKnown(typed)) return [[oneFor(typed), 1]];
    if (typed.length < LEAST_LETTERS) return [];
    const found = new Map<string, number>();
    const add = (words: readonly string[], sure: number) => {
      for (const word of words) found.set(oneFor(word), Math.max(sure, found.get(oneFor(word)) ?? 0));
    };
    add(nearest(typed, alike(typed), 3), SOUNDS_ALIKE);
    // Hardly anybody misses the first letter.
    const sameBegin = byBegin.get(typed.charAt(0)) ?? [];
    add(
      sameBegin.filter((word) => word.startsWith(typed)),
      BEGUN,
    );
    if (found.size > 0) return [...found];
    const most = Math.floor(typed.length / LETTERS_A_SLIP);
    const near = sameBegin.filter((word) => Math.abs(word.length - typed.length) <= most);
    const close = new Fuse(near, { threshold: FUZZY, distance: 20, ignoreLocation: false }).search(typed, {
      limit: 12,
    });
    add(
      nearest(
        typed,
        close.map(({ item }) => item),
        most,
      ),
      MISTYPED,
    );
    return [...found];
  };
  const met = new Map<string, Meant>();
  return (typed: string): Meant => {
    const words = met.get(typed) ?? lookUp(typed);
    met.set(typed, words);
    return words;
  };
}
