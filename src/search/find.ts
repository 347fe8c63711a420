import Fuse from 'fuse.js/basic';
import { type Document, kindOf } from './document.ts';
import { type FactRule, factsIn } from './facts.ts';
import type { Learnt, Reading } from './learn.ts';
import { type SameWords, sameWords } from './same-words.ts';
import { tokensOf } from './tokens.ts';

/** What is searched: as much of the file of the index. */
export interface Searched {
  readonly documents: readonly Document[];
  readonly same: readonly string[];
  readonly facts: readonly FactRule[];
  readonly learnt: Learnt;
}

export interface Found extends Document {
  readonly kind: ReturnType<typeof kindOf>;
  /** What the words already said, as answers of the flow that starts here. */
  readonly facts: Readonly<Record<string, string>>;
}

/** More than this is no search any more. */
const LONGEST = 120;
/** So many are shown. */
const MOST = 8;

/** What people start from comes first where the words fit several alike. */
const KIND_WEIGHT = {
  complaint: 1,
  calculate: 0.95,
  read: 0.7,
  page: 0.85,
  word: 0.8,
  step: 0.55,
  cause: 0.6,
} as const;

/** Whoever asks how, what or why wants to know, not to be asked. */
const QUESTION = /^(?:how|what|why|where|who|which|wie|was|warum|wo|como|cómo|que|qué)\b/i;
const ASKED_WEIGHT = 1.25;
const ANSWERS = new Set(['read', 'calculate', 'word']);

/** Words that ask for the meaning of another one. */
const MEANING = new Set(['mean', 'means', 'meaning', 'explain', 'explained', 'heisst', 'bedeutet', 'significa', 'es']);

/** What comes behind these is what happened before, not what is wrong. */
const SINCE = /\b(?:after|since|seit|nach|desde|despu[eé]s|tras)\b/i;
const PAST_WEIGHT = 0.5;

/** Words that stand in every question and tell nothing. */
const EMPTY = new Set(
  tokensOf(
    `a an and are as at be but by can do does for from has have i if in is it its me my of off on or so still that the then
     there they this to up was will with you your ich ist der die das den dem ein eine einen im am mein meine meinen wenn wo
     mit von und oder auch noch bei zum zur es sich er el los un una mi mis de del la las lo y o en con por para que se le
     cuando al su mas`,
  ),
);

/** Words that ask. In a title they tell nothing; typed as the first word, they tell one who wants to know. */
const ASKING = new Set(['how', 'what', 'which', 'when', 'where', 'who', 'why', 'much', 'many']);
const tells = (word: string) => !EMPTY.has(word) && !ASKING.has(word);

export type Finder = (query: string) => readonly Found[];

/** How much a word counts by where it stands. Each mark before a word, of one that decides, adds to it. */
const DECIDING = 1;
const IN_WORDS = 1;
const IN_TITLE = 1.1;
const IN_TEXT = 0.1;
/** Whoever types a title, or asks what its word means, means that place. */
const WHOLE_TITLE = 1.6;
/** A word that is typed wrong or is only begun counts a little less. */
const NOT_EXACT = 0.8;
/** A shorter word is looked up only as it is. */
const LEAST_LETTERS = 3;
/** Letters that a fuzzy match may be off by, as the library counts it. */
const FUZZY = 0.28;

type Places = Map<Document, number>;

/** Every word of the documents, as the one that stands for it, with how much it counts in each of them. */
function vocabularyOf(documents: readonly Document[], { oneFor }: SameWords): ReadonlyMap<string, Places> {
  const vocabulary = new Map<string, Places>();
  const add = (word: string, entry: Document, weight: number) => {
    const one = oneFor(word);
    const places: Places = vocabulary.get(one) ?? new Map();
    places.set(entry, Math.max(places.get(entry) ?? 0, weight));
    vocabulary.set(one, places);
  };
  for (const entry of documents) {
    for (const part of entry.words.split(/[ ,]+/))
      for (const word of tokensOf(part))
        add(word, entry, IN_WORDS + DECIDING * (part.length - part.replace(/^!+/, '').length));
    for (const word of tokensOf(entry.title)) if (tells(word)) add(word, entry, IN_TITLE);
    for (const word of tokensOf(entry.text ?? '')) if (tells(word)) add(word, entry, IN_TEXT);
  }
  return vocabulary;
}

/**
 * Reads what was typed: each word is looked up among all of the documents, by itself if it is there, else by what it
 * begins or comes close to. A word that few documents have counts more.
 */
export function reader({ documents, same: groups }: Pick<Searched, 'documents' | 'same'>): (typed: string) => Reading {
  const same = sameWords(groups);
  const { oneFor } = same;
  const vocabulary = vocabularyOf(documents, same);
  const isKnown = (word: string) => vocabulary.has(oneFor(word));
  const all = [...new Set([...vocabulary.keys(), ...same.others.filter(isKnown)])];
  const byBegin = new Map<string, string[]>();
  for (const word of all) byBegin.set(word.charAt(0), [...(byBegin.get(word.charAt(0)) ?? []), word]);
  const rarity = (word: string) => Math.log(1 + documents.length / (vocabulary.get(word)?.size ?? 1));

  /** The known words that a typed one may be, best first, each with how sure that is. */
  const meantBy = (typed: string): readonly (readonly [string, number])[] => {
    if (isKnown(typed)) return [[oneFor(typed), 1]];
    if (typed.length < LEAST_LETTERS) return [];
    const begun = new Set(all.filter((word) => word.startsWith(typed)).map(oneFor));
    if (begun.size > 0) return [...begun].map((word) => [word, NOT_EXACT]);
    // Hardly anybody misses the first letter, and a short word hides in many long ones.
    const near = (byBegin.get(typed.charAt(0)) ?? []).filter((word) => Math.abs(word.length - typed.length) <= 2);
    return new Fuse(near, { threshold: FUZZY, includeScore: true, minMatchCharLength: 2, distance: 20 })
      .search(typed, { limit: 4 })
      .map(({ item, score = 1 }) => [oneFor(item), NOT_EXACT * (1 - score)]);
  };
  const met = new Map<string, ReturnType<typeof meantBy>>();
  const meant = (typed: string) => {
    const words = met.get(typed) ?? meantBy(typed);
    met.set(typed, words);
    return words;
  };
  /** Whether a word that stands there tells anything: one that asks does so only where it comes first. */
  const counts = (word: string, at: number) => !EMPTY.has(word) && (at === 0 || !ASKING.has(oneFor(word)));
  /** The telling words of a text, all of them if none is, and beside them two that are written as one elsewhere. */
  const typedIn = (text: string): ReadonlyMap<string, string> => {
    const all = tokensOf(text);
    const telling = all.filter(counts);
    const words = telling.length > 0 ? telling : all;
    const joined = words.flatMap((word, i) => {
      const both = word + (words[i + 1] ?? '');
      return both !== word && isKnown(both) ? [both] : [];
    });
    return new Map([...words, ...joined].map((word) => [oneFor(word), word]));
  };

  const isTitle = ({ title }: Document, words: ReadonlyMap<string, string>): boolean => {
    const told = tokensOf(title).filter(tells).map(oneFor);
    return (
      told.length > 0 &&
      told.every((one) => words.has(one)) &&
      [...words].every(([one, word]) => told.includes(one) || ASKING.has(one) || MEANING.has(word))
    );
  };

  return (typed) => {
    const query = typed.slice(0, LONGEST);
    const words = typedIn(query);
    if ([...words.values()].join('').length < 2) return { fits: new Map(), words: [] };
    const past = typedIn(query.split(SINCE)[1] ?? '');
    const fits = new Map<Document, number>();
    const strengths: [string, number][] = [];
    for (const [one, word] of words) {
      const weight = past.has(one) ? PAST_WEIGHT : 1;
      const best = new Map<Document, number>();
      const candidates = meant(word);
      for (const [known, sure] of candidates)
        for (const [entry, counts] of vocabulary.get(known) ?? [])
          best.set(entry, Math.max(best.get(entry) ?? 0, weight * sure * counts * rarity(known)));
      for (const [entry, fit] of best) fits.set(entry, (fits.get(entry) ?? 0) + fit);
      const [first] = candidates;
      if (first)
        strengths.push([
          first[0],
          (weight * first[1]) / Math.sqrt(candidates[1]?.[1] === NOT_EXACT ? candidates.length : 1),
        ]);
    }
    const asked = QUESTION.test(query.trim());
    for (const [entry, fit] of fits) {
      const kind = kindOf(entry);
      const wants = asked && ANSWERS.has(kind) ? ASKED_WEIGHT : 1;
      fits.set(entry, fit * KIND_WEIGHT[kind] * wants * (isTitle(entry, words) ? WHOLE_TITLE : 1));
    }
    return { fits, words: strengths };
  };
}

/** A search over documents. */
export function finder(index: Searched): Finder {
  const read = reader(index);
  const { oneFor } = sameWords(index.same);
  return (query) => {
    const { fits, words } = read(query);
    const sums = new Map(fits);
    for (const [word, strength] of words)
      for (const [at, tenths] of index.learnt[word] ?? []) {
        const entry = index.documents[at];
        if (entry) sums.set(entry, (sums.get(entry) ?? 0) + (strength * tenths) / 10);
      }
    const said = new Set(tokensOf(query.slice(0, LONGEST)).map(oneFor));
    return [...sums]
      .filter(([, fit]) => fit > 0)
      .sort(([, a], [, b]) => b - a)
      .slice(0, MOST)
      .map(([entry]) => ({ ...entry, kind: kindOf(entry), facts: factsIn(said, entry, index.facts, oneFor) }));
  };
}
