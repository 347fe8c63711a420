import type { Document } from './document.ts';
import type { SaidWord } from './said.ts';

/**
 * When words give an answer. Choices stand between strokes; a choice of several words is one behind the other. A word
 * stands for all that mean the same, one with `=` before it only for itself, and one with `+` stands directly behind.
 */
export interface FactRule {
  /** `step=option` */
  readonly fact: string;
  /** The flows that ask for it. */
  readonly in: readonly string[];
  /** One choice of each of these has to be there. */
  readonly all?: readonly string[];
  /** And of each of these where it is told what happened before, or what is wrong now. */
  readonly past?: readonly string[];
  readonly now?: readonly string[];
  /** None of these may be. */
  readonly none?: readonly string[];
}

/** Rules, and the lists that they name: `@rear` is all words for the rear, `left @rear` left with any of them behind it. */
export interface Rules {
  readonly rules: readonly FactRule[];
  readonly lists: Readonly<Record<string, string>>;
}

/** An answer that the words give, in the flows that ask for it. */
export interface GivenFact {
  readonly step: string;
  readonly option: string;
  readonly flows: readonly string[];
}

/** So many words may stand between two of one choice: “no light”, “no more any light”. */
const BETWEEN = 2;

/** The words of a choice as they are written. */
type Written = readonly string[];
/** A word of a choice, and how many may stand between it and the one before. */
interface Wanted {
  readonly word: string;
  readonly between: number;
}
type Sequence = readonly Wanted[];
type Words = readonly SaidWord[];

/** A choice with each of the words in place of a list that it names. */
function spelledOut(choice: string, lists: Rules['lists']): readonly Written[] {
  const listed = (word: string): readonly Written[] => {
    if (!word.startsWith('@')) return [[word]];
    const list = lists[word.slice(1)];
    if (list === undefined) throw new Error(`content/words/facts.json: there is no list “${word.slice(1)}”.`);
    return choicesOf(list, lists);
  };
  return choice
    .split(' ')
    .map(listed)
    .reduce<readonly Written[]>((so, next) => so.flatMap((before) => next.map((word) => [...before, ...word])), [[]]);
}
const choicesOf = (choices: string, lists: Rules['lists']): readonly Written[] =>
  choices.split('|').flatMap((choice) => spelledOut(choice, lists));

const sequencesOf = (choices: string, lists: Rules['lists'], oneFor: (word: string) => string): readonly Sequence[] =>
  choicesOf(choices, lists).map((words) =>
    words.map((written) => {
      const [, behind, itself, word = ''] = /^(\+?)(=?)(.*)$/.exec(written) ?? [];
      return { word: itself ? word : oneFor(word), between: behind ? 0 : BETWEEN };
    }),
  );

/** Whether the words of a sequence were said, one behind the other, in one part. */
function isSaid([first, ...rest]: Sequence, words: Words): boolean {
  if (first === undefined) return false;
  return words.some(({ means, part }, start) => {
    if (!means.has(first.word)) return false;
    let at = start;
    return rest.every(({ word, between }) => {
      at = words.findIndex((said, i) => i > at && i <= at + 1 + between && said.part === part && said.means.has(word));
      return at >= 0;
    });
  });
}

/**
 * The answers that somebody's words already give to the flow that starts from a complaint. A fact is taken only where its
 * words are there: a guess would be put into somebody's mouth. The first rule of a step wins.
 * @param rules what words give
 * @param oneFor the word that stands for another
 * @returns `words`, every word that the rules look for, as the one that stands for it; and `given`, the answers that were
 * said
 */
export function factReader({ rules, lists }: Rules, oneFor: (word: string) => string) {
  const sequences = (choices: string) => sequencesOf(choices, lists, oneFor);
  const prepared = rules.map(({ fact, in: flows, all = [], past = [], now = [], none = [] }) => {
    const [step = '', option = ''] = fact.split('=');
    return {
      step,
      option,
      flows,
      all: all.map(sequences),
      past: past.map(sequences),
      now: now.map(sequences),
      none: none.flatMap(sequences),
    };
  });
  const words: ReadonlySet<string> = new Set(
    prepared.flatMap(({ all, past, now, none }) =>
      [...all, ...past, ...now, none].flatMap((choices) => choices.flatMap((one) => one.map(({ word }) => word))),
    ),
  );
  const given = (said: Words): readonly GivenFact[] => {
    const before = said.filter(({ past }) => past);
    const wrong = said.filter(({ past }) => !past);
    const there = new Set(said.flatMap(({ means }) => [...means]));
    // Most sequences fail by a word that is not there at all.
    const isOneSaid = (choices: readonly Sequence[], among: Words) =>
      choices.some((one) => one.every(({ word }) => there.has(word)) && isSaid(one, among));
    return prepared.filter(
      ({ all, past, now, none }) =>
        all.every((choices) => isOneSaid(choices, said)) &&
        past.every((choices) => isOneSaid(choices, before)) &&
        now.every((choices) => isOneSaid(choices, wrong)) &&
        !isOneSaid(none, said),
    );
  };
  return { words, given };
}

/** The answers of those rules for the flow that starts from a document, the first rule of a step. */
export function factsFor(given: readonly GivenFact[], { flow }: Document): Readonly<Record<string, string>> {
  const facts: Record<string, string> = {};
  if (flow !== undefined) for (const { step, option, flows } of given) if (flows.includes(flow)) facts[step] ??= option;
  return facts;
}
