/** The words of a text: letters and digits, in lower case, full-width ones as plain ones. */
export const tokensOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .normalize('NFKC')
    .match(/[\p{L}\p{N}]+/gu) ?? [];
