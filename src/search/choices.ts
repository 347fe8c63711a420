import { itself, type SaidWord } from './said.ts';

/** So many words may stand between two of one choice: “no light”, “no more any light”. */
const BETWEEN = 2;

/** One of these words, or one of a list, and how many words may stand between it and the one before. */
interface Place {
  readonly words: ReadonlySet<string>;
  readonly list?: Choices;
  readonly between: number;
  readonly sequence: Sequence;
  /** The last text in which it was met. */
  metIn: number;
}
/** A choice of several words, one behind the other. */
interface Sequence {
  readonly places: Place[];
  readonly choices: Choices;
  /** The last text in which one of its words was met, and how many were. */
  metIn: number;
  met: number;
}
/** Any of some sequences, and where it stands as a list in others. */
export interface Choices {
  readonly sequences: Sequence[];
  readonly usedAt: Place[];
}

/** The signs before a clause: whether nothing of it may be there, and whether it is of before or of now. */
export const markOf = (clause: string): string => /^!?[<>]?/.exec(clause)?.[0] ?? '';

type Words = readonly SaidWord[];

/**
 * Makes of written choices what is looked for, each list once.
 * @returns `choicesOf`, which reads choices; and `placesOf`, where each word that is looked for stands
 */
export function choiceReader(lists: Readonly<Record<string, string>>, oneFor: (word: string) => string) {
  const made = new Map<string, Choices>();
  const placesOf = new Map<string, Place[]>();
  const add = (sequence: Sequence, words: ReadonlySet<string>, between: number, list?: Choices) => {
    const place: Place = { words, between, sequence, metIn: 0, ...(list && { list }) };
    sequence.places.push(place);
    list?.usedAt.push(place);
    for (const word of words) {
      const others = placesOf.get(word);
      if (others) others.push(place);
      else placesOf.set(word, [place]);
    }
  };
  const listed = (name: string): Choices => {
    const list = lists[name];
    if (list === undefined) throw new Error(`content/words/facts.json: there is no list “${name}”.`);
    const choices = made.get(name) ?? choicesOf(list);
    made.set(name, choices);
    return choices;
  };
  const choicesOf = (written: string): Choices => {
    const choices: Choices = { sequences: [], usedAt: [] };
    // All that are one word are one place.
    const single = new Set<string>();
    for (const choice of written.split('|')) {
      const parts = choice.split(' ').map((part) => /^(\+?)([=@]?)(.*)$/.exec(part) ?? []);
      const sequence: Sequence = { places: [], choices, metIn: 0, met: 0 };
      for (const [, behind, mark, name = ''] of parts) {
        const between = behind ? 0 : BETWEEN;
        const word = mark === '=' ? itself(name) : oneFor(name);
        if (mark === '@') add(sequence, new Set(), between, listed(name));
        else if (parts.length === 1) single.add(word);
        else add(sequence, new Set([word]), between);
      }
      if (sequence.places.length > 0) choices.sequences.push(sequence);
    }
    if (single.size > 0) {
      const sequence: Sequence = { places: [], choices, metIn: 0, met: 0 };
      add(sequence, single, 0);
      choices.sequences.push(sequence);
    }
    return choices;
  };
  return { choicesOf, placesOf: placesOf as ReadonlyMap<string, readonly Place[]> };
}

/** So many texts were read. A key asks for one: counting in the places themselves costs least. */
let texts = 0;

/** The choices of which no word is missing, with the sequences that this is true of: most fail by one that was not said. */
export function possibleIn(
  said: Words,
  placesOf: ReadonlyMap<string, readonly Place[]>,
): ReadonlyMap<Choices, readonly Sequence[]> {
  const text = ++texts;
  const possible = new Map<Choices, Sequence[]>();
  const meet = (place: Place) => {
    if (place.metIn === text) return;
    place.metIn = text;
    const { sequence } = place;
    sequence.met = sequence.metIn === text ? sequence.met + 1 : 1;
    sequence.metIn = text;
    if (sequence.met < sequence.places.length) return;
    const others = possible.get(sequence.choices);
    others?.push(sequence);
    if (others) return;
    possible.set(sequence.choices, [sequence]);
    for (const used of sequence.choices.usedAt) meet(used);
  };
  for (const { means } of said) for (const word of means) placesOf.get(word)?.forEach(meet);
  return possible;
}

const isAny = (means: ReadonlySet<string>, words: ReadonlySet<string>): boolean => {
  for (const word of means) if (words.has(word)) return true;
  return false;
};

/** Whether one of some choices stands in these words, in one part. What was looked for once is kept. */
export function saidIn(
  said: Words,
  possible: ReadonlyMap<Choices, readonly Sequence[]>,
): (choices: Choices) => boolean {
  const kept = new Map<Choices, (readonly number[])[]>();
  /** The numbers of the words with which a choice ends that begins with this word. */
  const endsOf = (choices: Choices, at: number): readonly number[] => {
    const known = kept.get(choices) ?? [];
    kept.set(choices, known);
    known[at] ??= (possible.get(choices) ?? []).flatMap(({ places }) => endsOfSequence(places, at));
    return known[at];
  };
  const endsOfPlace = ({ words, list }: Place, at: number): readonly number[] => {
    if (list) return endsOf(list, at);
    const word = said[at];
    return word && isAny(word.means, words) ? [at] : [];
  };
  const behind = (end: number, place: Place): readonly number[] => {
    const ends: number[] = [];
    for (let at = end + 1, left = place.between; left >= 0 && said[at]?.part === said[end]?.part; at++) {
      ends.push(...endsOfPlace(place, at));
      if (!said[at]?.light) left--;
    }
    return ends;
  };
  const endsOfSequence = ([first, ...rest]: readonly Place[], at: number): readonly number[] => {
    let ends = first ? endsOfPlace(first, at) : [];
    for (const place of rest) {
      if (ends.length === 0) return ends;
      ends = [...new Set(ends.flatMap((end) => behind(end, place)))];
    }
    return ends;
  };
  return (choices) => possible.has(choices) && said.some((_, at) => endsOf(choices, at).length > 0);
}
