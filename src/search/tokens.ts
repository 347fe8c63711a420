/** Marks over letters, which many leave out. */
const MARKS = /\p{M}/gu;

/** The words of a text: letters and digits, in lower case, without marks and apostrophes, full-width ones as plain ones. */
export const tokensOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replace(MARKS, '')
    .replace(/['’]/g, '')
    .match(/[\p{L}\p{N}]+/gu) ?? [];
