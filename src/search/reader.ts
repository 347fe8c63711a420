import { type Document, KINDS, type Kind, kindOf } from './document.ts';
import { EMPTY } from './empty-words.ts';
import { factReader, type Rules } from './facts.ts';
import type { Reading } from './learn.ts';
import { itself, type SaidWord, typedWords } from './said.ts';
import type { SameWords } from './same-words.ts';
import { tokensOf } from './tokens.ts';
import { noneOf } from './told.ts';
import { MISTYPED, SAME_LETTERS, SOUNDS_ALIKE, wordLookup } from './word-lookup.ts';

/** More than this is no search any more. */
export const LONGEST = 120;

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
const QUESTION =
  /^(?:how|whats?|why|where|who|which|wie|was|warum|wo|como|cómo|que|qué)\b|\b(?:how (?:do|does|to|many|much|long)|what (?:is|are|does)|why (?:do|does))\b/i;
const ASKED_WEIGHT = 1.25;
const ANSWERS = new Set(['read', 'calculate', 'word']);
/** Whoever asks why, or to have it explained, wants to read. */
const EXPLAINS =
  /^(?:why|warum|wieso|por qu[eé])\b|\b(?:explain(?:ed|s)?|reasons?|basics|difference|how do(?:es)? .* work)\b/i;
const EXPLAINED = 1.5;

/** Whoever asks how a thing is done tells nothing of the own bike. */
const INSTRUCTS =
  /^(?:how (?:to|do|can|should|much|many|long)|wie (?:messe|prüfe|mache|stelle|viel|lange)|c[oó]mo (?:se|mido|pruebo|reviso|puedo))\b/i;

/** Whoever wants to measure, look at or try something wants a check. */
const CHECKS =
  /\b(?:check|see (?:if|whether)|test|measure|probe|inspect|meter|jumper|bypass|unplug|swap|messen|messe|prüfen|prüfe|testen|medir|mido|probar|prueba|revisar)\b|^(?:set|put|press|pull|push|touch|link|look|listen|turn|take|hold)\b|^(?:how|where) (?:do|can|should) i\b|^how to\b/i;
const CHECKED = 2.8;

/** Whoever says of a part what is wrong with it, and nothing of what is heard, has found a cause. */
const PART_IS =
  /\b(?:loose|broken|break in|worn|blown|burnt|fried|faulty|rubb(?:ed|ing|s)|chafed|frayed|torn|ripped|rotten|pinched|shorted|corroded|oxidi[sz]ed|rusty|crusty|green|dirty|bent|pushed (?:back|out)|(?:came|fell|come|pulled) (?:off|out|loose|apart)|disconnected|no continuity|open circuit|touch(?:es|ing)|cracked|melted|crossed|undersized|too (?:thin|hot|high|low|weak|many|few)|maxed|all the way up|drowned|wasn'?t|not (?:plugged|seated|home|connected|tight|in)|(?:water|wasser|moisture|agua) (?:in|inside|im|en)|wet inside|gebrochen|lose|locker|durchgescheuert|verschlissen|rot[oa]|suelt[oa]|oxidad[oa]|mojad[oa]|gastad[oa]|vieja)\b/i;
const HEARD_OR_ASKED =
  /\b(?:sound|music|audio|silent|dead|won'?t|quits?|cuts?|dies|died|after|since|when|if|now|how|what|why|where|who|is it|can i|check|inspect|test|look|hear|plays?|works?|nothing|light|lamp|speakers? (?:out|dead|blown)|side|left|right|re?flash\w*)\b|\?/i;
const FOUND = 2.4;

/** Words that ask for the meaning of another one, as they are typed. */
const MEANING = new Set(
  tokensOf('mean means meaning definition define called stand stands explain explained heisst bedeutet significa es'),
);
/** Whoever asks what a word means wants the word. */
const DEFINES =
  /^(?:whats?|was|que|qué)\b|\bwhat(?:s| is) (?:it|that|this)\b|\b(?:mean(?:s|ing)?|define|definition|stands? for|hei(?:ss|ß)t|bedeutet|significa)\b/i;
/** So does whoever asks it of a word that has others beside it: of any if it is plain, of one if it may be a question, too. */
const MEANS =
  /\b(?:mean(?:s|ing)?|defin(?:e|es|ition)|stands? for|hei(?:ss|ß)t|bedeutet|significa|what(?:s| is) (?:an?|the|it|that|this))\b/i;
const MAY_MEAN = /^(?:what(?:s| is| are)|was (?:ist|sind)|que es)\b/i;
const BESIDE = 2;
/** The word that is asked for, behind what asks for it and before where it was met: “what is gain on an amp”. */
const ASKED_FOR =
  /^(?:what(?:s| is| are| does)|was (?:ist|sind|hei(?:ss|ß)t|bedeutet|macht)|que (?:es|son|significa|hace)|define|meaning of) (?:an? |the |eine? |una? )?(.+?)(?: (?:in|on|for|at|mean|means|im|am|beim|bei|en|an|actually|exactly|genau|eigentlich)(?: .*)?)?$/;
/** The same, before what asks for it. */
const ASKED_BEHIND =
  /^(?:an? |eine? |una? )?(.+?) (?:what (?:is|does) (?:it|that|this).*|whats (?:it|that|this)|was ist das|was (?:hei(?:ss|ß)t|bedeutet) das|meaning|definition|explained|bedeutung|(?:que|was) (?:es|significa|ist|bedeutet)|significado)$/;

/** What happened before tells less of what is wrong. */
const PAST_WEIGHT = 0.5;

/** Words that ask. In a title they tell nothing; typed as the first word, they tell one who wants to know. */
const ASKING = new Set(['how', 'what', 'which', 'when', 'where', 'who', 'why', 'much', 'many']);
const tells = (word: string) => !EMPTY.has(word) && !ASKING.has(word);

/** How much a word counts by where it stands. Each mark before a word, of one that decides, adds to it. */
const DECIDING = 1;
const IN_WORDS = 1;
const IN_TITLE = 1.1;
const IN_TEXT = 0.1;
/** Whoever types a title means that place, and whoever asks what a word means, that word. */
const WHOLE_TITLE = 1.6;
const DEFINED = 3;
const DEFINED_AMONG = 2;
const ASKED_BY_NAME = 6;
/** Of two that are one word here, the one that was typed: “alternator” and “stator”. */
const AS_TYPED = 1.2;
/** What is named first is mostly what it is about. */
const FIRST = 1.3;

/** How strongly an answer that the words give counts beside them in what is learnt, and what kind of question it is. */
const ANSWER = 1;
const SHAPE = 0.5;

/** The parts of a word that is two words are at least so long. */
const LEAST_PART = 4;

/** A word's places: numbers of documents, and how much the word counts in each. Rows of numbers are read fastest. */
interface Places {
  readonly at: Uint16Array;
  readonly counted: Float64Array;
}

const NOWHERE: Places = { at: new Uint16Array(), counted: new Float64Array() };
const KIND_LIST = Object.keys(KINDS) as readonly Kind[];

/**
 * Only a longer word that sounds like one other, or is a slip of it, is taken for it in facts, and a shorter one that has
 * its letters: all else would be a guess.
 */
const isSure = (word: string, choices: number, sure: number) =>
  choices === 1 &&
  word.length > 3 &&
  sure >= (word.length > 5 ? MISTYPED : word.length > 4 ? SOUNDS_ALIKE : SAME_LETTERS);

/** What kind of question it is, as words to learn by. The reader takes the first four by their place. */
const SHAPES: readonly (readonly [name: string, is: RegExp])[] = [
  ['?asks', QUESTION],
  ['?defines', DEFINES],
  ['?explains', EXPLAINS],
  ['?checks', CHECKS],
  ['?instructs', INSTRUCTS],
  ['?number', /\d/],
  [
    '?flash',
    /\b(?:re)?flash\w*(?: \w+){0,2}\s*\?|\b(?:need|must|should|do i|does it|have to|required|needed|necessary)\b.*\b(?:re)?flash|\b(?:re)?flash\w*\b.*\b(?:needed|required|necessary|or not)\b/i,
  ],
  [
    '?begin',
    /\bwhere (?:do|to|should|can|would)? ?(?:i|we|one)? ?(?:begin|start)|\bwo (?:fange?|anfangen)|d[oó]nde (?:empiezo|empezar)/i,
  ],
  ['?amp', /\b(?:rear|back|bags?|lids?|front|fairing) amp|^(?:the |my |our )?amp/i],
  ['?stays', /\bamp\w*(?: \w+){0,4} (?:off|dead|dark|won'?t|doesn'?t|not|out|down)\b/i],
  [
    '?none',
    /\b(?:no|zero|without any) (?:sound|audio|music)\b.* (?:at all|whatsoever|anywhere|from any\w*)|\bnothing plays/i,
  ],
];

/** Where among the shapes that of one who asks how a thing is done stands. */
const INSTRUCTING = SHAPES.findIndex(([name]) => name === '?instructs');

/** Every word of the documents, as the one that stands for it. */
function vocabularyOf(documents: readonly Document[], { oneFor }: SameWords): ReadonlyMap<string, Places> {
  const vocabulary = new Map<string, Map<number, number>>();
  const add = (word: string, at: number, weight: number) => {
    const one = oneFor(word);
    const places = vocabulary.get(one) ?? new Map<number, number>();
    places.set(at, Math.max(places.get(at) ?? 0, weight));
    vocabulary.set(one, places);
  };
  for (const [at, { id, words, title, text = '' }] of documents.entries()) {
    for (const part of words.split(/[ ,]+/))
      for (const word of tokensOf(part))
        add(word, at, IN_WORDS + DECIDING * (part.length - part.replace(/^!+/, '').length));
    for (const word of tokensOf(title)) if (tells(word)) add(word, at, IN_TITLE);
    if (id.startsWith('step/')) for (const word of tokensOf(id.slice(5))) add(word, at, IN_WORDS);
    for (const word of tokensOf(text)) if (tells(word)) add(word, at, IN_TEXT);
  }
  return new Map(
    [...vocabulary].map(([word, places]) => [
      word,
      { at: Uint16Array.from(places.keys()), counted: Float64Array.from(places.values()) },
    ]),
  );
}

/**
 * Reads what was typed: each word is looked up among all of the documents. A word that few documents have counts more.
 * All that does not hang on the typed words is prepared once.
 * @param same words of one meaning
 * @param rules what words give as answers: their words are known, too
 */
export function reader(
  documents: readonly Document[],
  same: SameWords,
  rules: Rules = { rules: [], lists: {}, asked: {} },
): (typed: string) => Reading {
  const { oneFor } = same;
  const facts = factReader(rules, oneFor);
  const vocabulary = vocabularyOf(documents, same);
  const known = new Set([...vocabulary.keys(), ...facts.words]);
  const isKnown = (word: string) => known.has(oneFor(word));
  const meant = wordLookup([...new Set([...known, ...same.others.filter(isKnown)])], isKnown, same);
  const rarity = new Map([...vocabulary].map(([word, { at }]) => [word, Math.log(1 + documents.length / at.length)]));
  const kinds = documents.map(kindOf);
  /** How a document is called: by its title, a word also by the other ones for it. */
  const names = documents.map((entry, at) =>
    [entry.title, ...(kinds[at] === 'word' ? entry.words.split(',') : [])]
      .map((name) => tokensOf(name).filter(tells).map(oneFor))
      .filter(({ length }) => length > 0),
  );
  const titles = documents.map(({ title }) => tokensOf(title));
  /** The documents by the first words of their names, and by their names without blanks: few are called what was typed. */
  const called = Map.groupBy(
    names.flatMap((all, at) => all.flatMap((name) => [name[0] ?? '', name.join('')].map((word) => ({ word, at })))),
    ({ word }) => word,
  );
  const kindNumbers = Uint8Array.from(kinds, (kind) => KIND_LIST.indexOf(kind));
  const weights = Float64Array.from(kinds, (kind) => KIND_WEIGHT[kind]);

  /** Whether a word that stands there tells anything: one that asks does so only where it comes first. */
  const counts = (word: string, at: number) => !EMPTY.has(word) && (at === 0 || !ASKING.has(oneFor(word)));
  /** A word that is not known, but is two that are, one behind the other, as German writes them. */
  const parts = (word: string): readonly string[] => {
    if (word.length < 2 * LEAST_PART || isKnown(word)) return [word];
    for (let at = word.length - LEAST_PART; at >= LEAST_PART; at--) {
      const [before, behind] = [word.slice(0, at), word.slice(at)];
      const first = [before, before.replace(/(?:s|n|en)$/, '')].find((one) => one.length >= LEAST_PART && isKnown(one));
      if (first !== undefined && isKnown(behind)) return [first, behind];
    }
    return [word];
  };
  /** The telling words of a text, all of them if none is, and beside them two that are written as one elsewhere. */
  const typedIn = (all: readonly string[]): ReadonlyMap<string, string> => {
    const telling = all.filter(counts).flatMap(parts);
    const words = telling.length > 0 ? telling : all;
    const typed = new Map(words.map((word) => [oneFor(word), word]));
    for (const [i, word] of words.entries()) {
      const both = word + (words[i + 1] ?? '');
      if (both !== word && isKnown(both)) typed.set(oneFor(both), both);
    }
    return typed;
  };
  /** Whether a name is what was typed, or asked the meaning of. */
  const isNamed = (name: readonly string[], words: ReadonlyMap<string, string>): boolean => {
    if (!name.every((one) => words.has(one))) return false;
    for (const [one, word] of words) if (!name.includes(one) && !ASKING.has(one) && !MEANING.has(word)) return false;
    return true;
  };

  return (typed) => {
    const query = typed.slice(0, LONGEST);
    const typedAs = typedWords(query);
    const words = typedIn(typedAs.map(({ word }) => word));
    const fits = new Float64Array(documents.length);
    const strengths: [string, number][] = [];
    const said: readonly (SaidWord & { readonly means: Set<string> })[] = typedAs.flatMap(
      ({ word, told, ...where }, i) => {
        if (told !== 'is') return [{ ...where, means: new Set([told === 'none' ? noneOf(oneFor(word)) : told]) }];
        const both = word + (typedAs[i + 1]?.word ?? '');
        const joined = both !== word && isKnown(both) ? [oneFor(both)] : [];
        return parts(word).map((one) => ({ ...where, means: new Set([one, itself(one), oneFor(one), ...joined]) }));
      },
    );
    if ([...words.values()].join('').length < 2) return { fits, words: strengths, given: [] };
    const likelyOf = (one: string, word: string): string => {
      const [[likely, howSure] = [one, 1], ...others] = meant(word);
      return others.length === 0 && howSure >= MISTYPED ? likely : one;
    };
    const past = typedIn(typedAs.filter(({ past }) => past).map(({ word }) => word));
    let first = FIRST;
    /** The words as the ones that they are taken for. */
    const taken = new Map(words);
    for (const [one, word] of words) {
      const weight = (past.has(one) ? PAST_WEIGHT : 1) * first;
      if (tells(one)) first = 1;
      const candidates = meant(word);
      const [[likely, howSure] = [one, 1]] = candidates;
      if (candidates.length === 1 && howSure >= MISTYPED && taken.delete(one)) taken.set(likely, word);
      const strengthOf = (known: string, sure: number) => weight * sure * (rarity.get(known) ?? 0);
      if (candidates.length === 1 && candidates[0]) {
        const strength = strengthOf(...candidates[0]);
        const { at: places, counted } = vocabulary.get(candidates[0][0]) ?? NOWHERE;
        for (const [i, place] of places.entries()) fits[place] = (fits[place] ?? 0) + strength * (counted[i] ?? 0);
      } else {
        const best = new Map<number, number>();
        for (const [known, sure] of candidates) {
          const strength = strengthOf(known, sure);
          const { at: places, counted } = vocabulary.get(known) ?? NOWHERE;
          for (const [i, at] of places.entries())
            best.set(at, Math.max(best.get(at) ?? 0, strength * (counted[i] ?? 0)));
        }
        for (const [at, fit] of best) fits[at] = (fits[at] ?? 0) + fit;
      }
      const share = weight / Math.sqrt(candidates.length);
      for (const [known, sure] of candidates.slice(0, 1)) strengths.push([known, sure * share]);
      for (const [known, sure] of candidates)
        if (isSure(word, candidates.length, sure)) for (const { means } of said) if (means.has(word)) means.add(known);
    }
    const text = query.trim();
    const shapes = SHAPES.map(([, is]) => is.test(text));
    // What is told in another part than the question is told: “how do i find the profile, got a meter”.
    const given = facts.given(shapes[INSTRUCTING] ? said.filter(({ part }) => part > 0) : said);
    for (const name of new Set(given.flatMap(({ step, option }) => [`=${step}`, `=${step}=${option}`])))
      strengths.push([name, ANSWER]);
    for (const [i, [name]] of SHAPES.entries()) if (shapes[i]) strengths.push([name, SHAPE]);
    const finds = PART_IS.test(text) && !HEARD_OR_ASKED.test(text);
    if (finds) strengths.push(['?finds', SHAPE]);
    const [asked, defines, explains, checks] = shapes;
    const beside = [...words].filter(([one, word]) => !ASKING.has(one) && !MEANING.has(word)).length;
    const plain = tokensOf(text);
    const asks = plain.join(' ');
    const sought = tokensOf((ASKED_FOR.exec(asks) ?? ASKED_BEHIND.exec(asks))?.[1] ?? '')
      .filter(counts)
      .flatMap(parts);
    const soughtAs = new Map(sought.map((word) => [likelyOf(oneFor(word), word), word]));
    const soughtAsOne = sought.join('');
    const means = MEANS.test(text) || (MAY_MEAN.test(text) && beside <= BESIDE);
    const wanted = (kind: Kind) =>
      checks && kind === 'step'
        ? CHECKED
        : finds && kind === 'cause'
          ? FOUND
          : explains && kind === 'read'
            ? EXPLAINED
            : asked && ANSWERS.has(kind)
              ? ASKED_WEIGHT
              : 1;
    const wants = KIND_LIST.map(wanted);
    for (let at = 0; at < fits.length; at++) {
      const fit = fits[at] ?? 0;
      if (fit !== 0) fits[at] = fit * (weights[at] ?? 0) * (wants[kindNumbers[at] ?? 0] ?? 1);
    }
    const near = new Set(
      [...taken.keys(), ...soughtAs.keys(), soughtAsOne].flatMap((word) => called.get(word)?.map(({ at }) => at) ?? []),
    );
    for (const at of near) {
      const own = names[at] ?? [];
      const isWord = kinds[at] === 'word';
      const byName =
        isWord && sought.length > 0 && own.some((name) => isNamed(name, soughtAs) || name.join('') === soughtAsOne);
      const named = byName
        ? ASKED_BY_NAME * (titles[at]?.every((word) => plain.includes(word)) ? AS_TYPED : 1)
        : own.some((name) => isNamed(name, taken))
          ? defines && isWord
            ? DEFINED
            : WHOLE_TITLE
          : means && isWord && own.some((name) => name.every((one) => taken.has(one)))
            ? DEFINED_AMONG
            : 1;
      fits[at] = (fits[at] ?? 0) * named;
    }
    return { fits, words: strengths, given };
  };
}
