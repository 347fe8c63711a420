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

/** A search over documents. */
export function finder({ documents, same: groups, facts, learnt }: Searched): Finder {
  const same = sameWords(groups);
  const read = reader(documents, same, facts);
  return (query) => {
    const { fits, words, given } = read(query);
    for (const [word, strength] of words)
      for (const [at, tenths] of learnt[word] ?? []) fits[at] = (fits[at] ?? 0) + (strength * tenths) / 10;
    const best = [...fits.keys()].filter((at) => (fits[at] ?? 0) > 0);
    return best
      .sort((a, b) => (fits[b] ?? 0) - (fits[a] ?? 0))
      .slice(0, MOST)
      .flatMap((at) => {
        const entry = documents[at];
        return entry ? [{ ...entry, kind: kindOf(entry), facts: factsFor(given, entry) }] : [];
      });
  };
}
