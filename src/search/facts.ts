import { type Choices, choiceReader, markOf, possibleIn, saidIn } from './choices.ts';
import type { Document } from './document.ts';
import type { SaidWord } from './said.ts';

/**
 * When words give an answer, as it is written: `step,step=option in flow: words & words & !words`. One of each clause has
 * to be there, with `<` before it where it is told what happened before, with `>` where it is told what is wrong now, and
 * none of a clause with `!`, or with `!>` none that is wrong now. The choices of a clause stand between strokes; a choice
 * of several words is one behind the other. A word stands for all that mean the same, one with `=` before it only for
 * itself, one with `+` stands directly behind, and `@rear` is any choice of a list. With `%` in it a rule is two: `%` is left and `^` right, and the other way.
 * So it is with `$` and `~` for front and rear, also in the name of a list, and with `#` it is one for each usual impedance.
 */
export interface Rules {
  readonly rules: readonly string[];
  readonly lists: Readonly<Record<string, string>>;
  /** The flows that have an answer, by `step=option`. */
  readonly asked: Readonly<Record<string, readonly string[]>>;
}

/** A rule for one answer. */
export interface FactRule {
  readonly step: string;
  readonly option: string;
  /** The flows that it holds in, if it names some. */
  readonly only?: readonly string[];
  readonly clauses: readonly string[];
}

/** An answer that the words give, in the flows that ask for it. */
export interface GivenFact {
  readonly step: string;
  readonly option: string;
  readonly flows: readonly string[];
}

const RULE = /^([\w,-]+)=([\w-]+)(?: in ([\w,-]+))?: (.+)$/;

/** What is written once for all of these: each of them in place of the first sign, the one beside it in place of the second. */
const SIGNS: readonly (readonly [sign: string, other: string, of: readonly (readonly [string, string])[]])[] = [
  [
    '%',
    '^',
    [
      ['left', 'right'],
      ['right', 'left'],
    ],
  ],
  [
    '$',
    '~',
    [
      ['front', 'rear'],
      ['rear', 'front'],
    ],
  ],
  [
    '#',
    '#',
    [
      ['2', ''],
      ['4', ''],
      ['8', ''],
    ],
  ],
];

/** Texts with signs in them, once for each of what they stand for. */
const writtenOut = (texts: readonly string[]): readonly string[] =>
  SIGNS.reduce(
    (all, [sign, other, of]) =>
      all.flatMap((text) =>
        text.includes(sign) ? of.map(([one, two]) => text.replaceAll(sign, one).replaceAll(other, two)) : [text],
      ),
    texts,
  );

/** The rules, one for each answer. */
export const factRules = (written: readonly string[]): readonly FactRule[] =>
  writtenOut(written).flatMap((rule) => {
    const [, steps, option, only, clauses] = RULE.exec(rule) ?? [];
    if (steps === undefined || option === undefined || clauses === undefined)
      throw new Error(`content/words/facts.json: “${rule}” is no rule.`);
    return steps
      .split(',')
      .map((step) => ({ step, option, ...(only && { only: only.split(',') }), clauses: clauses.split(' & ') }));
  });

/**
 * The answers that somebody's words already give to the flow that starts from a complaint. A fact is taken only where its
 * words are there: a guess would be put into somebody's mouth. The first rule of a step wins.
 * @param rules what words give
 * @param oneFor the word that stands for another
 * @returns `words`, every word that the rules look for, as the one that stands for it; and `given`, the answers that were
 * said
 */
export function factReader({ rules, lists, asked }: Rules, oneFor: (word: string) => string) {
  const named = writtenOut(Object.entries(lists).map(([name, choices]) => `${name}:${choices}`));
  const { choicesOf, placesOf } = choiceReader(
    Object.fromEntries(named.map((list) => [list.slice(0, list.indexOf(':')), list.slice(list.indexOf(':') + 1)])),
    oneFor,
  );
  const prepared = factRules(rules).map(({ step, option, only, clauses }) => {
    const marked = (mark: string): readonly Choices[] =>
      clauses.filter((clause) => markOf(clause) === mark).map((clause) => choicesOf(clause.slice(mark.length)));
    return {
      fact: { step, option, flows: only ?? asked[`${step}=${option}`] ?? [] },
      all: marked(''),
      past: marked('<'),
      now: marked('>'),
      none: marked('!'),
      noneNow: marked('!>'),
    };
  });
  /** The rules by the first of their clauses: most of it was not said. */
  const byFirst = Map.groupBy(prepared.keys(), (at) => {
    const { all = [], past = [], now = [] } = prepared[at] ?? {};
    return [...all, ...past, ...now][0];
  });
  const given = (said: readonly SaidWord[]): readonly GivenFact[] => {
    const possible = possibleIn(said, placesOf);
    const isSaid = saidIn(said, possible);
    const isBefore = saidIn(
      said.filter(({ past }) => past),
      possible,
    );
    const isWrong = saidIn(
      said.filter(({ past }) => !past),
      possible,
    );
    return [...possible.keys()]
      .flatMap((first) => byFirst.get(first) ?? [])
      .sort((a, b) => a - b)
      .flatMap((at) => {
        const rule = prepared[at];
        return rule?.all.every(isSaid) &&
          rule.past.every(isBefore) &&
          rule.now.every(isWrong) &&
          !rule.none.some(isSaid) &&
          !rule.noneNow.some(isWrong)
          ? [rule.fact]
          : [];
      });
  };
  const words = [...placesOf.keys()].map((word) => word.replace(/^=/, ''));
  return { words: new Set(words) as ReadonlySet<string>, given };
}

/** The answers of those rules for the flow that starts from a document, the first rule of a step. */
export function factsFor(given: readonly GivenFact[], { flow }: Document): Readonly<Record<string, string>> {
  const facts: Record<string, string> = {};
  if (flow !== undefined) for (const { step, option, flows } of given) if (flows.includes(flow)) facts[step] ??= option;
  return facts;
}
