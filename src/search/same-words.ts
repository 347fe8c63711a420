import { tokensOf } from './tokens.ts';

/** One word for all that mean the same: other forms, common misspellings, German and Spanish. */
export interface SameWords {
  /** The word that stands for this one, itself if there is none. */
  oneFor(word: string): string;
  /** Every word that another one stands for. */
  readonly others: readonly string[];
}

/** A word without the ending of a plural or of a tense, where enough of it is left. */
export function stemOf(word: string): string {
  const cut = (end: string, least: number) =>
    word.endsWith(end) && word.length - end.length >= least ? word.slice(0, -end.length) : undefined;
  if (word.endsWith('ss')) return word;
  return cut('ing', 3) ?? cut('ed', 3) ?? cut('es', 4) ?? cut('s', 3) ?? word;
}

/** @param groups words of one meaning each, with blanks between; the first of each stands for all */
export function sameWords(groups: readonly string[]): SameWords {
  const heads = new Map<string, string>();
  for (const group of groups) {
    const [head = '', ...rest] = tokensOf(group);
    for (const word of [head, ...rest]) if (!heads.has(word)) heads.set(word, head);
  }
  const oneFor = (word: string) => heads.get(word) ?? heads.get(stemOf(word)) ?? stemOf(word);
  return { oneFor, others: [...heads.keys()] };
}

/** The groups without the words that are only plurals of others in them. */
export function withoutForms(groups: readonly string[]): readonly string[] {
  const { oneFor } = sameWords(groups);
  const inGroup = new Set(groups.flatMap(tokensOf));
  return groups.map((group) => {
    const [head = '', ...rest] = tokensOf(group);
    const isForm = (word: string) => {
      const stem = stemOf(word);
      return (
        stem !== word && word.endsWith('s') && (stem === head || inGroup.has(stem)) && oneFor(stem) === oneFor(word)
      );
    };
    return [head, ...[...new Set(rest)].filter((word) => word !== head && oneFor(word) === head && !isForm(word))].join(
      ' ',
    );
  });
}
