/** A consonant that English doubles before an ending. */
const DOUBLED = /([bdgmnprt])\1$/;
/** So many letters are left at least where a silent e or an ending goes. */
const LEAST = 4;

/** An English word without the ending of a plural or of a tense, where enough of it is left: “dropping” is “drop”. */
export function stemOf(word: string): string {
  if (/(?:ss|thing)$/.test(word)) return word;
  const cut = (end: string, least: number) =>
    word.endsWith(end) && word.length - end.length >= least ? word.slice(0, -end.length) : undefined;
  const verb = cut('ing', 3) ?? cut('ed', 3);
  const stem = verb?.replace(DOUBLED, '$1') ?? cut('es', 4) ?? cut('s', 3) ?? word;
  return stem.length > LEAST && stem.endsWith('e') ? stem.slice(0, -1) : stem;
}

/** What is left before an ending that a word takes in German and Spanish, the longest that leaves enough of it. */
const ROOT =
  /^(.{4,}?)(?:amiento|imiento|aciones|acion|ungen|ieron|ando|iendo|aron|aban|ados|adas|idos|idas|ten|tet|est|ung|aba|ado|ada|ido|ida|ing|en|em|er|es|et|st|te|ar|ir|as|os|an|ed|e|n|t|s|a|o)$/;

/** A word without any of its endings, to find it among words of which not every form is written. */
export function rootOf(word: string): string {
  const root = ROOT.exec(word)?.[1]?.replace(DOUBLED, '$1') ?? word;
  return root.length >= LEAST ? root : word;
}
