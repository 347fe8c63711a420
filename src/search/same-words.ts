import { rootOf, stemOf } from './stem.ts';
import { tokensOf } from './tokens.ts';

/** One word for all that mean the same: other forms, common misspellings, German and Spanish. */
export interface SameWords {
  /** The word that stands for this one, itself if there is none. */
  oneFor(word: string): string;
  /** Every word that another one stands for. */
  readonly others: readonly string[];
}

/** Words with those that stand for them, and what remains of each without its endings. */
interface Heads {
  readonly heads: Map<string, string>;
  readonly byRoot: Map<string, readonly string[]>;
}

function headsOf(groups: readonly string[]): Heads {
  const heads = new Map<string, string>();
  for (const group of groups) {
    const [head = '', ...rest] = tokensOf(group);
    for (const word of [head, ...rest]) if (!heads.has(word)) heads.set(word, head);
  }
  return { heads, byRoot: Map.groupBy(heads.keys(), rootOf) };
}

/** A shorter word is no form of another: “fair” is no “fairing”. */
const LEAST_LETTERS = 5;

/** The word of a group of which this one is a form, if only one group has such a word. */
function formOf(word: string, { heads, byRoot }: Heads): string | undefined {
  if (word.length < LEAST_LETTERS) return undefined;
  const others = byRoot.get(rootOf(word))?.filter((one) => one !== word && heads.has(one)) ?? [];
  const [first] = others;
  return first !== undefined && others.every((one) => heads.get(one) === heads.get(first)) ? first : undefined;
}

/** The other word by which this one is known without being written, if there is one. */
const knownBy = (word: string, all: Heads): string | undefined =>
  stemOf(word) !== word && all.heads.has(stemOf(word)) ? stemOf(word) : formOf(word, all);

/** @param groups words of one meaning each, with blanks between; the first of each stands for all */
export function sameWords(groups: readonly string[]): SameWords {
  const all = headsOf(groups);
  const met = new Map(all.heads);
  const oneFor = (word: string) => {
    const known = met.get(word);
    if (known !== undefined) return known;
    const by = knownBy(word, all);
    const head = by === undefined ? stemOf(word) : (all.heads.get(by) ?? by);
    met.set(word, head);
    return head;
  };
  return { oneFor, others: [...all.heads.keys()] };
}

/** The groups without the words that are only forms of others in them. */
export function withoutForms(groups: readonly string[]): readonly string[] {
  const all = headsOf(groups);
  const needed = new Set(all.heads.values());
  const drop = new Set<string>();
  for (const [word, head] of [...all.heads].sort(([a], [b]) => b.length - a.length)) {
    if (needed.has(word)) continue;
    const by = knownBy(word, all);
    if (by === undefined || all.heads.get(by) !== head) continue;
    needed.add(by);
    drop.add(word);
    all.heads.delete(word);
  }
  return groups.map((group) => {
    const [head = '', ...rest] = tokensOf(group);
    return [head, ...new Set(rest.filter((word) => word !== head && all.heads.get(word) === head))].join(' ');
  });
}
