import type { Document } from './document.ts';
import type { SaidWord } from './said.ts';

/**
 * When words give an answer, as it is written: `step,step=option in flow: words & words & !words`. One of each clause has
 * to be there, with `<` before it where it is told what happened before, with `>` where it is told what is wrong now, and
 * none of a clause with `!`. The choices of a clause stand between strokes; a choice of several words is one behind the
 * other. A word stands for all that mean the same, one with `=` before it only for itself, one with `+` stands directly
 * behind, and `@rear` is any choice of a list. With `%` in it a rule is two: `%` is left and `^` right, and the other way.
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

/** So many words may stand between two of one choice: “no light”, “no more any light”. */
const BETWEEN = 2;

const RULE = /^([\w,-]+)=([\w%-]+)(?: in ([\w,-]+))?: (.+)$/;

/** A rule with sides in it, once for each. */
const bothSides = (rule: string): readonly string[] =>
  rule.includes('%')
    ? [rule.replaceAll('%', 'left').replaceAll('^', 'right'), rule.replaceAll('%', 'right').replaceAll('^', 'left')]
    : [rule];

/** The rules, one for each answer. */
export const factRules = (written: readonly string[]): readonly FactRule[] =>
  written.flatMap(bothSides).flatMap((rule) => {
    const [, steps, option, only, clauses] = RULE.exec(rule) ?? [];
    if (steps === undefined || option === undefined || clauses === undefined)
      throw new Error(`content/words/facts.json: “${rule}” is no rule.`);
    return steps
      .split(',')
      .map((step) => ({ step, option, ...(only && { only: only.split(',') }), clauses: clauses.split(' & ') }));
  });

/** One of these words or of these lists, and how many words may stand between it and the one before. */
interface Place {
  readonly words: Set<string>;
  readonly lists: readonly Choices[];
  readonly between: number;
}
type Sequence = readonly Place[];
type Choices = readonly Sequence[];
type Words = readonly SaidWord[];

/** Makes of written choices what is looked for, each list once. */
function compiler(lists: Rules['lists'], oneFor: (word: string) => string) {
  const made = new Map<string, Choices>();
  const words = new Set<string>();
  const listed = (name: string): Choices => {
    const list = lists[name];
    if (list === undefined) throw new Error(`content/words/facts.json: there is no list “${name}”.`);
    const choices = made.get(name) ?? choicesOf(list);
    made.set(name, choices);
    return choices;
  };
  const placeOf = (written: string): Place => {
    const [, behind, mark, name = ''] = /^(\+?)([=@]?)(.*)$/.exec(written) ?? [];
    const between = behind ? 0 : BETWEEN;
    if (mark === '@') return { words: new Set(), lists: [listed(name)], between };
    const word = mark ? name : oneFor(name);
    words.add(word);
    return { words: new Set([word]), lists: [], between };
  };
  /** The choices, with all that are one word in one. */
  const choicesOf = (choices: string): Choices => {
    const single: Place = { words: new Set(), lists: [], between: 0 };
    const longer = choices.split('|').flatMap((choice) => {
      const places = choice.split(' ').map(placeOf);
      const [first] = places;
      if (places.length > 1 || first === undefined || first.lists.length > 0) return [places];
      for (const word of first.words) single.words.add(word);
      return [];
    });
    return single.words.size > 0 ? [[single], ...longer] : longer;
  };
  return { choicesOf, words };
}

const meets = (some: ReadonlySet<string>, others: ReadonlySet<string>): boolean => {
  const [fewer, more] = some.size < others.size ? [some, others] : [others, some];
  for (const word of fewer) if (more.has(word)) return true;
  return false;
};

/** Whether one of some choices stands in these words. What was looked for once is kept. */
function saidIn(said: Words): (choices: Choices) => boolean {
  const there = new Set(said.flatMap(({ means }) => [...means]));
  const possible = new Map<Choices, readonly Sequence[]>();
  /** The sequences of which no word is missing: most fail by one that was not said at all. */
  const possibleOf = (choices: Choices): readonly Sequence[] => {
    const known = possible.get(choices) ?? choices.filter((sequence) => sequence.every(canBe));
    possible.set(choices, known);
    return known;
  };
  const canBe = ({ words, lists }: Place): boolean =>
    meets(words, there) || lists.some((list) => possibleOf(list).length > 0);

  const kept = new Map<Choices, (readonly number[])[]>();
  /** The numbers of the words with which a choice ends that begins with this word. */
  const endsOf = (choices: Choices, at: number): readonly number[] => {
    const known = kept.get(choices) ?? [];
    kept.set(choices, known);
    known[at] ??= possibleOf(choices).flatMap((sequence) => endsOfSequence(sequence, at));
    return known[at];
  };
  const endsOfPlace = ({ words, lists }: Place, at: number): readonly number[] => {
    const ends = lists.flatMap((list) => endsOf(list, at));
    const word = said[at];
    return word && meets(word.means, words) ? [...ends, at] : ends;
  };
  const behind = (end: number, place: Place): readonly number[] => {
    const ends: number[] = [];
    for (let at = end + 1; at <= end + 1 + place.between && said[at]?.part === said[end]?.part; at++)
      ends.push(...endsOfPlace(place, at));
    return ends;
  };
  const endsOfSequence = ([first, ...rest]: Sequence, at: number): readonly number[] =>
    rest.reduce<readonly number[]>(
      (ends, place) => (ends.length === 0 ? ends : [...new Set(ends.flatMap((end) => behind(end, place)))]),
      first ? endsOfPlace(first, at) : [],
    );
  return (choices) => possibleOf(choices).length > 0 && said.some((_, at) => endsOf(choices, at).length > 0);
}

/**
 * The answers that somebody's words already give to the flow that starts from a complaint. A fact is taken only where its
 * words are there: a guess would be put into somebody's mouth. The first rule of a step wins.
 * @param rules what words give
 * @param oneFor the word that stands for another
 * @returns `words`, every word that the rules look for, as the one that stands for it; and `given`, the answers that were
 * said
 */
export function factReader({ rules, lists, asked }: Rules, oneFor: (word: string) => string) {
  const { choicesOf, words } = compiler(lists, oneFor);
  const prepared = factRules(rules).map(({ step, option, only, clauses }) => {
    const marked = (mark: string) =>
      clauses.filter((clause) => clause.startsWith(mark)).map((clause) => choicesOf(clause.slice(mark.length)));
    return {
      fact: { step, option, flows: only ?? asked[`${step}=${option}`] ?? [] },
      all: clauses.filter((clause) => !/^[<>!]/.test(clause)).map(choicesOf),
      past: marked('<'),
      now: marked('>'),
      none: marked('!'),
    };
  });
  const given = (said: Words): readonly GivenFact[] => {
    const isSaid = saidIn(said);
    const isBefore = saidIn(said.filter(({ past }) => past));
    const isWrong = saidIn(said.filter(({ past }) => !past));
    return prepared
      .filter(
        ({ all, past, now, none }) =>
          all.every(isSaid) && past.every(isBefore) && now.every(isWrong) && !none.some(isSaid),
      )
      .map(({ fact }) => fact);
  };
  return { words: words as ReadonlySet<string>, given };
}

/** The answers of those rules for the flow that starts from a document, the first rule of a step. */
export function factsFor(given: readonly GivenFact[], { flow }: Document): Readonly<Record<string, string>> {
  const facts: Record<string, string> = {};
  if (flow !== undefined) for (const { step, option, flows } of given) if (flows.includes(flow)) facts[step] ??= option;
  return facts;
}
