import type { Document } from './document.ts';
import type { SaidWord } from './said.ts';

/**
 * When words give an answer. Choices stand between strokes; a choice of several words is one behind the other. A word
 * stands for all that mean the same, and one with `=` before it only for itself.
 */
export interface FactRule {
  /** `step=option` */
  readonly fact: string;
  /** The flows that ask for it. */
  readonly in: readonly string[];
  /** One choice of each of these has to be there. */
  readonly all: readonly string[];
  /** And of each of these where it is told what happened before, or what is wrong now. */
  readonly past?: readonly string[];
  readonly now?: readonly string[];
  /** None of these may be. */
  readonly none?: readonly string[];
}

/** An answer that the words give, in the flows that ask for it. */
export interface GivenFact {
  readonly step: string;
  readonly option: string;
  readonly flows: readonly string[];
}

/** So many words may stand between two of one choice: “no light”, “no more any light”. */
const BETWEEN = 2;

type Sequence = readonly string[];
type Words = readonly SaidWord[];

/** Whether the words of a sequence were said, one behind the other, in one part. */
function isSaid([first = '', ...rest]: Sequence, words: Words): boolean {
  if (rest.length === 0) return words.some(({ means }) => means.has(first));
  return words.some(({ means, part }, start) => {
    if (!means.has(first)) return false;
    let at = start;
    return rest.every((next) => {
      const found = words.findIndex(
        (word, i) => i > at && i <= at + 1 + BETWEEN && word.part === part && word.means.has(next),
      );
      at = found;
      return found >= 0;
    });
  });
}

/**
 * The answers that somebody's words already give to the flow that starts from a complaint. A fact is taken only where its
 * words are there: a guess would be put into somebody's mouth. The first rule of a step wins.
 * @param rules what words give, each of their words put as the one that stands for it, once
 * @param oneFor the word that stands for another
 * @returns the answers for what was said, by step, for a document
 */
export function factReader(rules: readonly FactRule[], oneFor: (word: string) => string) {
  const sequences = (choices: string): readonly Sequence[] =>
    choices
      .split('|')
      .map((choice) => choice.split(' ').map((word) => (word.startsWith('=') ? word.slice(1) : oneFor(word))));
  const prepared = rules.map(({ fact, in: flows, all, past = [], now = [], none = [] }) => {
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
  return (said: Words): readonly GivenFact[] => {
    const before = said.filter(({ past }) => past);
    const wrong = said.filter(({ past }) => !past);
    const areIn = (words: Words, of: readonly (readonly Sequence[])[]) =>
      of.every((choices) => choices.some((sequence) => isSaid(sequence, words)));
    const given = prepared.filter(
      ({ all, past, now, none }) =>
        areIn(said, all) &&
        areIn(before, past) &&
        areIn(wrong, now) &&
        !none.some((sequence) => isSaid(sequence, said)),
    );
    return given;
  };
}

/** The answers of those rules for the flow that starts from a document, the first rule of a step. */
export function factsFor(given: readonly GivenFact[], { flow }: Document): Readonly<Record<string, string>> {
  const facts: Record<string, string> = {};
  if (flow !== undefined) for (const { step, option, flows } of given) if (flows.includes(flow)) facts[step] ??= option;
  return facts;
}
