/**
 * The side that is meant, where two are told of: “left rear silent, right one plays” is about the left, and so is “quieter
 * than the right”. Where only one plays, the other is meant.
 */
const LEFT = 'left|lh|links?|linke[mnrs]?|izquierd[ao]s?';
const RIGHT = 'right|rh|rechts?|rechte[mnrs]?|derech[ao]s?';
const SIDE = `${LEFT}|${RIGHT}`;
/** What stands between a side and what is said of it. */
const PLACE =
  'rear|back|front|lid|bag|side|one|ones|hand|channel|speakers?|fairing|saddlebag|pod|seite|hinten|vorne?|lautsprecher|box|trasero|trasera|delantero|still|is|are|does|also|always|sounds?|itself|noch|si|sigue|ist|all|it|on';
const FINE =
  'plays?|playing|works?|working|ok|okay|fine|good|great|perfect|perfectly|alright|normal|clean|loud|louder|clear|spielt|geht|läuft|gut|normal|laut|suena|funciona|sirve|bien|jala|toca';
/** Behind these it plays only then, or not as it should. */
const BUT =
  'only|until|till|when|if|unless|at|but|than|quiet|quieter|weak|faint|soft|thin|low|less|half|sometimes|now|then|after|for|once|while|during|bei|wenn|bis|nur|cuando|si|hasta|pero';
const ONLY = 'only|just|nur|solo|sólo';
const THE = '(?:the |der |die |das |el |la |my )?';
const FINE_SIDE = new RegExp(
  `\\b((?:${ONLY}) ${THE}(?:rear |back |front )?)?(${SIDE})((?: (?:${PLACE}))*) (?:${FINE})\\b(?! (?:${BUT})\\b)`,
  'gi',
);
const FINE_ON_SIDE = new RegExp(
  `(?<!\\b(?:not|nothing|doesn'?t|don'?t|won'?t|never|stopped|quit|longer|nicht|no) )\\b((?:${ONLY}) )?(?:${FINE})(?: (?:${FINE}))? ((?:${ONLY}) )?(?:on|from|in|rechts|links)? ?${THE}(${SIDE})\\b`,
  'gi',
);
/** What a side is compared with. */
const COMPARED = new RegExp(
  `(?<!\\b(?:${SIDE}) )\\b(?:than|to|as|unlike|vs|versus|als|que|el) ${THE}(?:${SIDE})\\b`,
  'gi',
);
const IS_LEFT = new RegExp(`\\b(?:${LEFT})\\b`, 'i');
const IS_RIGHT = new RegExp(`\\b(?:${RIGHT})\\b`, 'i');

/** A text of which only the side is left that is meant. */
export function meantSide(text: string): string {
  const [left, right] = [IS_LEFT.test(text), IS_RIGHT.test(text)];
  if (!left && !right) return text;
  const other = left ? 'right' : 'left';
  if (left && right) {
    const fewer = text.replace(FINE_SIDE, '').replace(FINE_ON_SIDE, '').replace(COMPARED, '');
    return IS_LEFT.test(fewer) || IS_RIGHT.test(fewer) ? fewer : text;
  }
  return text
    .replace(FINE_SIDE, (told, only: string | undefined, _, place: string) => (only ? `${other}${place} silent` : told))
    .replace(FINE_ON_SIDE, (told, only: string | undefined, only2: string | undefined) =>
      only || only2 ? `silent on ${other}` : told,
    );
}
