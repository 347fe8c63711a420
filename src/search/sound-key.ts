/** Letters and pairs of letters that are heard as one, in the order in which they are put. */
const HEARD_AS: readonly (readonly [RegExp, string])[] = [
  [/^[gkp]n/, 'n'],
  [/^wr/, 'r'],
  [/ph/g, 'f'],
  [/gh(?=t|$)/g, ''],
  [/s?ch|sh|tch/g, 'x'],
  [/c(?=[eiy])|z|sc(?=[eiy])/g, 's'],
  [/ck|c|qu?/g, 'k'],
  [/(.)\1+/g, '$1'],
];

/**
 * How a word sounds, roughly: its consonants, and whether a vowel begins it. Two spellings of one word mostly have the
 * same, as in Soundex (Knuth, The Art of Computer Programming 3, 6), of which it is a finer form without its length.
 */
export function soundOf(word: string): string {
  const heard = HEARD_AS.reduce((so, [letters, as]) => so.replace(letters, as), word);
  return heard
    .replace(/^[aeiouy]+/, 'a')
    .replace(/(?<=.)[aeiouyhw]/g, '')
    .replace(/(.)\1+/g, '$1');
}
