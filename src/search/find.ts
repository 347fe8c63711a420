import Fuse from 'fuse.js/basic';
import { type Document, kindOf } from './document.ts';
import { factsIn } from './facts.ts';
import { tokensOf } from './tokens.ts';

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

/** What comes behind these is what happened before, not what is wrong. */
const SINCE = /\b(?:after|since|seit|nach|desde|después de)\b/i;
const PAST_WEIGHT = 0.5;

/** Words that stand in every question and tell nothing. */
const EMPTY = new Set(
  'a an and are as at be but by can do does for from has have i if in is it its me my of off on or so still that the then there they this to up was will with you your ich ist der die das ein eine el la los un una mi'.split(
    ' ',
  ),
);

/** Words that ask. In a title they tell as little; typed, they tell one who wants to know. */
const ASKING = new Set(['how', 'what', 'which', 'when', 'where', 'who', 'why', 'much', 'many']);
const tells = (word: string) => !EMPTY.has(word) && !ASKING.has(word);

/** What was typed, in lower case, with signs and empty words taken out, unless nothing else is left. */
export function wordsOf(query: string): readonly string[] {
  const words = tokensOf(query.slice(0, LONGEST));
  const telling = words.filter((word) => !EMPTY.has(word));
  return telling.length > 0 ? telling : words;
}

export type Finder = (query: string) => readonly Found[];

/** How much a word counts by where it stands. A deciding word, written with a mark before it, tells places apart. */
const DECIDING = 2.5;
const IN_WORDS = 1;
const IN_TITLE = 1.1;
const IN_TEXT = 0.1;
/** A word that is typed wrong or is only begun counts a little less. */
const NOT_EXACT = 0.8;
/** Letters that a fuzzy match may be off by, as the library counts it. */
const FUZZY = 0.28;

type Places = Map<Document, number>;

/** Every word of the documents, with how much it counts in each of them. */
function vocabularyOf(documents: readonly Document[]): ReadonlyMap<string, Places> {
  const vocabulary = new Map<string, Places>();
  const add = (word: string, entry: Document, weight: number) => {
    const places: Places = vocabulary.get(word) ?? new Map();
    places.set(entry, Math.max(places.get(entry) ?? 0, weight));
    vocabulary.set(word, places);
  };
  for (const entry of documents) {
    for (const part of entry.words.split(/[ ,]+/))
      for (const word of tokensOf(part)) add(word, entry, part.startsWith('!') ? DECIDING : IN_WORDS);
    for (const word of tokensOf(entry.title)) if (tells(word)) add(word, entry, IN_TITLE);
    for (const word of tokensOf(entry.text ?? '')) if (tells(word)) add(word, entry, IN_TEXT);
  }
  return vocabulary;
}

/**
 * A search over documents: each word that was typed is looked up among all of theirs, by itself if it is there, else by
 * what it begins or comes close to. A word that few documents have counts more.
 */
export function finder(documents: readonly Document[]): Finder {
  const vocabulary = vocabularyOf(documents);
  const all = [...vocabulary.keys()];
  const fuse = new Fuse(all, { threshold: FUZZY, includeScore: true, minMatchCharLength: 2, distance: 20 });
  const rarity = (word: string) => Math.log(1 + documents.length / (vocabulary.get(word)?.size ?? 1));

  const looked = new Map<string, Places>();
  const lookUp = (typed: string): Places => {
    const found: Places = new Map();
    const take = (word: string, fit: number) => {
      for (const [entry, weight] of vocabulary.get(word) ?? [])
        found.set(entry, Math.max(found.get(entry) ?? 0, fit * weight * rarity(word)));
    };
    if (vocabulary.has(typed)) take(typed, 1);
    else if (typed.length >= 3) {
      const begun = all.filter((word) => word.startsWith(typed));
      for (const word of begun) take(word, NOT_EXACT);
      if (begun.length === 0)
        // A short word hides in many long ones.
        for (const { item, score = 1 } of fuse.search(typed, { limit: 4 }))
          if (Math.abs(item.length - typed.length) <= 2) take(item, NOT_EXACT * (1 - score));
    }
    return found;
  };
  const known = (typed: string): Places => {
    const places = looked.get(typed) ?? lookUp(typed);
    looked.set(typed, places);
    return places;
  };

  return (query) => {
    const words = wordsOf(query);
    if (words.join('').length < 2) return [];
    const asked = QUESTION.test(query.trim());
    const fits = new Map<Document, number>();
    const past = new Set(wordsOf(query.split(SINCE)[1] ?? ''));
    for (const word of new Set(words))
      for (const [entry, fit] of known(word))
        fits.set(entry, (fits.get(entry) ?? 0) + fit * (past.has(word) ? PAST_WEIGHT : 1));
    return [...fits]
      .map(([entry, fit]) => {
        const kind = kindOf(entry);
        return { entry, fit: fit * KIND_WEIGHT[kind] * (asked && ANSWERS.has(kind) ? ASKED_WEIGHT : 1) };
      })
      .sort((a, b) => b.fit - a.fit)
      .slice(0, MOST)
      .map(({ entry }) => ({ ...entry, kind: kindOf(entry), facts: factsIn(query, entry) }));
  };
}
