/** What people write in another way than they mean it, and how it is meant. */
const MEANT: readonly (readonly [written: RegExp, meant: string])[] = [
  // Corners as a workshop notes them: “lf dead”, “rear l”.
  [/\b(?:lf|fl|vl)\b/gi, 'left front'],
  [/\b(?:rf|vr)\b/gi, 'right front'],
  [/\b(?:lr|rl|hl)\b/gi, 'left rear'],
  [/\brr\b/gi, 'right rear'],
  [/\b(front|rear|back|bag|lid|fairing|vorne|hinten) l\b/gi, 'left $1'],
  [/\b(front|rear|back|bag|lid|fairing|vorne|hinten) r\b/gi, 'right $1'],
  [/\bno(sound|music|audio|power|light|bass)\b/gi, 'no $1'],
  [/\bhole (?=bike|thing|system|side|left|right|front|rear)/gi, 'whole '],
  [/\bafter market\b/gi, 'aftermarket'],
  // “Quite” that is no measure of another word is “quiet”.
  [
    /\b(real|really|very|so|too|pretty|are|is|still|speakers?|rears?|ones|fronts?|sounds?|plays?) quite\b(?=\s*(?:$|[,;.!?]| (?:but|and|front|rear|back|even|compared|when|on|at|than|from|in)\b))/gi,
    '$1 quiet',
  ],
  // As loud as another: that does not say that both are the same.
  [/\b(?:at|bei|al?) (?:the )?(?:same|gleicher|mismo) (?:loudness|volume|level|lautstärke|volumen)\b/gi, ''],
];

/** A text as it is meant. */
export const respelt = (text: string): string =>
  MEANT.reduce((so, [written, meant]) => so.replace(written, meant), text);
