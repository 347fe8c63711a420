import { type Document, kindOf } from './document.ts';
import { factsFor, type Rules } from './facts.ts';
import type { Learnt } from './learn.ts';
import { reader } from './reader.ts';
import { sameWords } from './same-words.ts';

/** What is searched: as much of the file of the index. */
export interface Searched {
  readonly documents: readonly Document[];
  readonly same: readonly string[];
  readonly facts: Rules;
  readonly learnt: Learnt;
}

export interface Found extends Document {
  readonly kind: ReturnType<typeof kindOf>;
  /** What the words already said, as answers of the flow that starts here. */
  readonly facts: Readonly<Record<string, string>>;
}

/** So many are shown. */
const MOST = 8;

export type Finder = (query: string) => readonly Found[];

/** The numbers of the documents that fit best, the best first. Every key asks for it: hardly any of them is sorted. */
function bestOf(fits: Float64Array): readonly number[] {
  const best: number[] = [];
  const fitOf = (at: number | undefined) => (at === undefined ? 0 : (fits[at] ?? 0));
  for (let at = 0; at < fits.length; at++) {
    const fit = fitOf(at);
    if (fit <= (best.length < MOST ? 0 : fitOf(best.at(-1)))) continue;
    const behind = best.findIndex((other) => fitOf(other) < fit);
    best.splice(behind < 0 ? best.length : behind, 0, at);
    best.length = Math.min(best.length, MOST);
  }
  return best;
}

/** A search over documents. */
export function finder({ documents, same: groups, facts, learnt }: Searched): Finder {
  const same = sameWords(groups);
  const read = reader(documents, same, facts);
  return (query) => {
    const { fits, words, given } = read(query);
    for (const [word, strength] of words)
      for (const [at, thirds] of learnt[word] ?? []) fits[at] = (fits[at] ?? 0) + (strength * thirds) / 3;
    return bestOf(fits).flatMap((at) => {
      const entry = documents[at];
      return entry ? [{ ...entry, kind: kindOf(entry), facts: factsFor(given, entry) }] : [];
    });
  };
}
