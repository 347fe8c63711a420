/** A word that opens its entry where it stands in a text. */
export interface Term {
  readonly word: string;
  readonly slug: string;
}
/** A part of a text: as it is, or a word with the entry that it opens. */
export type Piece = string | { readonly text: string; readonly slug: string };

const quoted = (word: string) => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(' ', '\\s+');

/** A word that is one of capitals is a word only so: “OL” is no “ol”. */
const isShort = (word: string) => word === word.toUpperCase();

/**
 * Splits texts at the words of a list, the longest first, with or without the ending of a plural.
 * @param terms the words
 * @returns a function that splits a text; a word in `seen` is left as it is, and what was found is added there
 */
export function termFinder(terms: readonly Term[]): (text: string, seen?: Set<string>) => readonly Piece[] {
  const longest = terms.toSorted((a, b) => b.word.length - a.word.length);
  const slugs = new Map(longest.map(({ word, slug }) => [isShort(word) ? word : word.toLowerCase(), slug]));
  const any = new RegExp(
    `(?<![\\p{L}\\p{N}-])(${longest.map(({ word }) => quoted(word)).join('|')})(?:s|es)?(?![\\p{L}\\p{N}-])`,
    'giu',
  );
  const slugFor = (word: string) => {
    const plain = word.replace(/\s+/g, ' ');
    return slugs.get(plain) ?? slugs.get(plain.toLowerCase());
  };
  return (text, seen = new Set()) => {
    if (terms.length === 0) return [text];
    const pieces: Piece[] = [];
    let from = 0;
    for (const match of text.matchAll(any)) {
      const slug = slugFor(match[1] ?? '');
      if (slug === undefined || seen.has(slug)) continue;
      seen.add(slug);
      if (match.index > from) pieces.push(text.slice(from, match.index));
      pieces.push({ text: match[0], slug });
      from = match.index + match[0].length;
    }
    if (from < text.length || pieces.length === 0) pieces.push(text.slice(from));
    return pieces;
  };
}
