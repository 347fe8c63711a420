import { upperFirst } from '../compute/first-letter.ts';
import type { Document } from './document.ts';
import { factRules } from './facts.ts';
import type { IndexFile } from './index-file.ts';
import type { Learnt } from './learn.ts';
import { sameWords } from './same-words.ts';
import { tokensOf } from './tokens.ts';

/** The index as it is sent: fields of one kind together, and nothing that follows from the rest. */
export interface PackedIndex extends Pick<IndexFile, 'same'> {
  /** Each field of all documents, a line for each. */
  readonly documents: Readonly<Record<keyof Document, string>>;
  /**
   * The words by their numbers among all that are sent, those that are nowhere else as they are, and for each of both the
   * places with what it adds, two characters for each place.
   */
  readonly learnt: readonly [numbers: string, others: string, added: string];
  /** The rules, and the lists with their names, a line for each. */
  readonly facts: readonly [rules: string, lists: string];
  /** How the facts are called, in the order in which the rules give them. */
  readonly factNames: readonly string[];
  /** The flows, and the numbers of those that have an answer, by `step=option`, or by the step for all of its answers. */
  readonly flows: readonly string[];
  readonly asked: Readonly<Record<string, readonly number[]>>;
}

/** In an order in which what is alike stands near: it is sent shorter so. That of the parts of the index is, too. */
const FIELDS: readonly (keyof Document)[] = ['words', 'id', 'title', 'text', 'flow', 'measure', 'reads', 'path'];

/** Where a document leads that has no page of its own by another name. */
const usualPath = (id: string): string => (id.startsWith('word/') ? id.replace('word/', 'words/#') : `${id}/`);

/** What a document is called whose address says it. */
function usualTitle(id: string): string {
  const said = id.slice(id.indexOf('/') + 1).replaceAll('-', ' ');
  return id.startsWith('word/') ? said : upperFirst(said);
}

/** What is not sent where it is as usual. */
const usual: Partial<Record<keyof Document, (id: string) => string>> = { path: usualPath, title: usualTitle };

/** The first character that JSON leaves as it is. Small numbers are one byte. */
const FIRST_CHARACTER = 0x23;
/** The least addition that is written, in thirds. */
const LEAST = -40;
/** The places that a word speaks for: how far each is behind the one before, and what it adds. */
const writtenPlaces = (added: Learnt[string]): string =>
  String.fromCharCode(
    ...added.flatMap(([place, thirds], i) => [
      FIRST_CHARACTER + place - (added[i - 1]?.[0] ?? 0),
      FIRST_CHARACTER - LEAST + Math.max(LEAST, thirds),
    ]),
  );
function readPlaces(written: string): Learnt[string] {
  const places: [number, number][] = [];
  for (let at = 0, place = 0; at < written.length; at += 2) {
    place += written.charCodeAt(at) - FIRST_CHARACTER;
    places.push([place, written.charCodeAt(at + 1) - FIRST_CHARACTER + LEAST]);
  }
  return places;
}

/** Numbers that grow, each as how far it is behind the one before. */
const writtenNumbers = (numbers: readonly number[]): string =>
  String.fromCharCode(...numbers.map((number, i) => FIRST_CHARACTER + number - (numbers[i - 1] ?? 0)));
function readNumbers(written: string): readonly number[] {
  let number = 0;
  return Array.from(written, (character) => {
    number += character.charCodeAt(0) - FIRST_CHARACTER;
    return number;
  });
}

/** Every fact that rules give, once. */
const factsOf = (rules: readonly string[]): readonly string[] => [
  ...new Set(factRules(rules).map(({ step, option }) => `${step}=${option}`)),
];
const stepOf = (fact: string): string => fact.slice(0, fact.indexOf('='));

/** All words and facts that are sent in any case, in an order that follows from them: what is learnt is mostly of these. */
function allSent({ documents, same, facts }: Pick<PackedIndex, 'documents' | 'same' | 'facts'>): readonly string[] {
  const { oneFor } = sameWords(same);
  const words = tokensOf([...same, ...facts, ...FIELDS.map((field) => documents[field])].join(' ')).map(oneFor);
  const given = factsOf(facts[0].split('\n')).flatMap((fact) => [`=${stepOf(fact)}`, `=${fact}`]);
  return [...new Set([...words, ...given])].sort();
}

/** Packs the index for sending. */
export function packed({ documents, same, learnt, facts, factNames }: IndexFile): PackedIndex {
  const column = (field: keyof Document) =>
    documents.map((entry) => (entry[field] === usual[field]?.(entry.id) ? '' : (entry[field] ?? ''))).join('\n');
  const flows = [...new Set(Object.values(facts.asked).flat())];
  const asked: Record<string, readonly number[]> = {};
  for (const [fact, ids] of Object.entries(facts.asked)) {
    const numbers = ids.map((id) => flows.indexOf(id));
    asked[stepOf(fact)] ??= numbers;
    if (`${asked[stepOf(fact)]}` !== `${numbers}`) asked[fact] = numbers;
  }
  const sent = {
    facts: [
      facts.rules.join('\n'),
      Object.entries(facts.lists)
        .map(([name, choices]) => `${name}:${choices}`)
        .join('\n'),
    ] as const,
    same,
    documents: Object.fromEntries(FIELDS.map((field) => [field, column(field)])) as PackedIndex['documents'],
  };
  const numbers = new Map(allSent(sent).map((word, number) => [word, number]));
  const numbered = Object.keys(learnt)
    .filter((word) => numbers.has(word))
    .sort((a, b) => (numbers.get(a) ?? 0) - (numbers.get(b) ?? 0));
  const others = Object.keys(learnt).filter((word) => !numbers.has(word));
  return {
    facts: sent.facts,
    flows,
    asked,
    same,
    documents: sent.documents,
    factNames: factsOf(facts.rules).map((fact) => factNames[fact] ?? ''),
    learnt: [
      writtenNumbers(numbered.map((word) => numbers.get(word) ?? 0)),
      others.join(' '),
      [...numbered, ...others].map((word) => writtenPlaces(learnt[word] ?? [])).join(' '),
    ],
  };
}

/** The index out of what was sent. */
export function unpacked({ documents, same, learnt, facts, flows, asked, factNames }: PackedIndex): IndexFile {
  const columns = FIELDS.map((field) => [field, documents[field].split('\n')] as const);
  const entries = documents.id.split('\n').map((id, at) => {
    const told = columns.flatMap(([field, lines]) => (lines[at] ? [[field, lines[at]] as const] : []));
    return { words: '', path: usualPath(id), title: usualTitle(id), ...Object.fromEntries(told) } as Document;
  });
  const all = allSent({ documents, same, facts });
  const [numbers, others, added] = learnt;
  const words = [...readNumbers(numbers).map((number) => all[number] ?? ''), ...others.split(' ').filter(Boolean)];
  const of = added.split(' ');
  const places = Object.fromEntries(words.map((word, at) => [word, readPlaces(of[at] ?? '')]));
  const [rules = [], listed = []] = facts.map((told) => told.split('\n'));
  const lists = Object.fromEntries(listed.map((line) => line.split(':') as [string, string]));
  const given = factsOf(rules);
  const named = Object.fromEntries(
    given.map((fact) => [fact, (asked[fact] ?? asked[stepOf(fact)] ?? []).flatMap((at) => flows[at] ?? [])]),
  );
  const names = Object.fromEntries(given.map((fact, at) => [fact, factNames[at] ?? '']));
  return { documents: entries, same, learnt: places, facts: { rules, lists, asked: named }, factNames: names };
}
