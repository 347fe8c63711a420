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
  let least = 0;
  for (let at = 0; at < fits.length; at++) {
    const fit = fits[at] ?? 0;
    if (fit <= least) continue;
    let behind = best.length < MOST ? best.length : MOST - 1;
    for (; behind > 0 && (fits[best[behind - 1] ?? 0] ?? 0) < fit; behind--) best[behind] = best[behind - 1] ?? 0;
    best[behind] = at;
    if (best.length === MOST) least = fits[best[MOST - 1] ?? 0] ?? 0;
  }
  return best;
}

/** A search over documents. */
export function finder({ documents, same: groups, facts, learnt }: Searched): Finder {
  const same = sameWords(groups);
  const read = reader(documents, same, facts);
  /** What is learnt in one row a word, a place and its thirds after the other, which is read fastest. */
  const rows = new Map(Object.entries(learnt).map(([word, places]) => [word, Int16Array.from(places.flat())]));
  return (query) => {
    const { fits, words, given } = read(query);
    for (const [word, strength] of words) {
      const row = rows.get(word) ?? [];
      for (let i = 0; i < row.length; i += 2) {
        const at = row[i] ?? 0;
        fits[at] = (fits[at] ?? 0) + (strength * (row[i + 1] ?? 0)) / 3;
      }
    }
    return bestOf(fits).flatMap((at) => {
      const entry = documents[at];
      return entry ? [{ ...entry, kind: kindOf(entry), facts: factsFor(given, entry) }] : [];
    });
  };
}
