import Fuse from 'fuse.js/basic';
import type { SameWords } from './same-words.ts';
import { slipsBetween } from './slips.ts';
import { soundOf } from './sound-key.ts';
import { stemOf } from './stem.ts';

/** The known words that a typed one may be, best first, each with how sure that is. */
export type Meant = readonly (readonly [word: string, sure: number])[];

/** How sure it is that a typed word is the one that it begins, or sounds like, or is a slip or two away from. */
const BEGUN = 0.75;
export const SOUNDS_ALIKE = 0.85;
export const MISTYPED = 0.8;
/** With two neighbours the wrong way round, or a letter once that is there twice, it can hardly be another. */
export const SAME_LETTERS = 0.9;
/** A word that sounds the same may be so many slips away. */
const SOUND_SLIPS = 3;
/** A shorter word is looked up only as it is. */
const LEAST_LETTERS = 3;
/** In a word of so few letters a vowel is as telling as a consonant. */
const SHORT = 4;
/** One slip for so many letters is forgiven. */
const LETTERS_A_SLIP = 3;
/** The letters of a word in the order of the alphabet, each once. */
const heap = (word: string): string => [...new Set(word)].sort().join('');
/** Letters that a fuzzy match may be off by, as the library counts it. */
const FUZZY = 0.4;

/** The letters of a word, one bit each. */
const lettersOf = (word: string): number => {
  let bits = 0;
  for (let at = 0; at < word.length; at++) bits |= 1 << (word.charCodeAt(at) & 31);
  return bits;
};
const bitsIn = (bits: number): number => {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count++;
  return count;
};

/**
 * Looks typed words up among those that are known: as they are, else by what they sound like or begin, else by what they
 * come close to. What was looked up once is kept, so that a key costs no more than the word that is being typed.
 */
export function wordLookup(all: readonly string[], isKnown: (word: string) => boolean, { oneFor }: SameWords) {
  const byBegin = Map.groupBy(all, (word) => word.charAt(0));
  const bySound = Map.groupBy(all, soundOf);
  const hasLetters = (word: string, typed: string) => [...typed].every((letter) => word.includes(letter));
  const alike = (typed: string) => {
    const words = bySound.get(soundOf(typed)) ?? [];
    const stem = stemOf(typed);
    // In a short word the vowel is half of it: “hat” is no “hot”.
    return [
      ...(typed.length > SHORT ? words : words.filter((word) => hasLetters(word, typed))),
      ...(stem === typed ? [] : (bySound.get(soundOf(stem)) ?? []).filter((word) => hasLetters(word, stem))),
    ];
  };

  const byShape = Map.groupBy(
    all.map((word) => ({ word, letters: lettersOf(word) })),
    ({ word }) => word.charAt(0) + word.length,
  );
  /** Words of the same first letter that the library finds close. What has too many other letters is never shown to it. */
  const closeTo = (typed: string, most: number): readonly string[] => {
    const own = lettersOf(typed);
    const near: string[] = [];
    for (let length = typed.length - most; length <= typed.length + most; length++)
      for (const { word, letters } of byShape.get(typed.charAt(0) + length) ?? [])
        if (bitsIn(own & ~letters) <= most && bitsIn(letters & ~own) <= most) near.push(word);
    if (near.length === 0) return near;
    return new Fuse(near, { threshold: FUZZY, distance: 20 }).search(typed, { limit: 12 }).map(({ item }) => item);
  };

  /** The words that are the fewest slips away, if those are few enough, and how many that is. */
  const nearest = (typed: string, words: readonly string[], most: number) => {
    const slips = words.map((word) =>
      Math.abs(word.length - typed.length) > most
        ? Infinity
        : Math.min(slipsBetween(typed, word), slipsBetween(stemOf(typed), word)),
    );
    const least = Math.min(most + 1, ...slips);
    return { words: words.filter((_, i) => slips[i] === least && least <= most), least };
  };
  const lookUp = (typed: string): Meant => {
    if (isKnown(typed)) return [[oneFor(typed), 1]];
    if (typed.length < LEAST_LETTERS) return [];
    const found = new Map<string, number>();
    const letters = heap(typed);
    const add = (words: readonly string[], sure: number) => {
      for (const word of words) {
        const known = heap(word) === letters ? Math.max(sure, SAME_LETTERS) : sure;
        found.set(oneFor(word), Math.max(known, found.get(oneFor(word)) ?? 0));
      }
    };
    const heard = nearest(typed, alike(typed), SOUND_SLIPS);
    // Hardly anybody misses the first letter.
    const sameBegin = byBegin.get(typed.charAt(0)) ?? [];
    const begun = sameBegin.filter((word) => word.startsWith(typed));
    const most = Math.min(Math.floor(typed.length / LETTERS_A_SLIP), heard.least - 1);
    if (begun.length === 0 && most > 0) add(nearest(typed, closeTo(typed, most), most).words, MISTYPED);
    // What only sounds like it is no match for what is fewer slips away.
    if (found.size === 0) add(heard.words, SOUNDS_ALIKE);
    if ([...found.values()].includes(SAME_LETTERS)) return [...found];
    for (const word of begun) found.set(oneFor(word), Math.max(BEGUN, found.get(oneFor(word)) ?? 0));
    return [...found];
  };
  const met = new Map<string, Meant>();
  return (typed: string): Meant => {
    const words = met.get(typed) ?? lookUp(typed);
    met.set(typed, words);
    return words;
  };
}
