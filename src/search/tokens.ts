/** Marks over letters, which many leave out. */
const MARKS = /\p{M}/gu;

/** A number with its unit behind it, written as one. */
const WITH_UNIT = /(\d)(?=\p{L}{1,3}(?![\p{L}\p{N}]))/gu;

/** The words of a text: letters and digits, in lower case, without marks and apostrophes, full-width ones as plain ones. */
export const tokensOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replace(MARKS, '')
    .replace(/['’]/g, '')
    .replace(WITH_UNIT, '$1 ')
    .match(/[\p{L}\p{N}]+/gu) ?? [];

/** The words of a text, each once. */
export const wordsOf = (text: string): ReadonlySet<string> => new Set(tokensOf(text));
