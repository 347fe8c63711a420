import { respelt } from './respelt.ts';
import { meantSide } from './sides.ts';
import { SINCE } from './since.ts';
import { tokensOf, wordsOf } from './tokens.ts';
import { type Told, toldOf } from './told.ts';

/** A word as it was typed, and where it stands. */
export interface TypedWord {
  readonly word: string;
  /** Which part of the text, cut at its marks. */
  readonly part: number;
  /** Whether it tells of what happened before, not of what is wrong. */
  readonly past: boolean;
  /** Whether it may stand between any two words: “took the lid off”, “took my lid off”. */
  readonly light: boolean;
  readonly told: Told;
}

/** A word that was said: all that it may stand for, and where. */
export interface SaidWord extends Omit<TypedWord, 'word' | 'told'> {
  readonly means: ReadonlySet<string>;
}

/** A word as one that stands for nothing but itself. */
export const itself = (word: string): string => `=${word}`;

/** A mark that ends a part. One inside a number does not. */
const MARKS = /[,;:.!?()–—/]+(?=\s|$)|\s[-–—]\s/u;

/** Articles, and whose a thing is. */
const LIGHT = new Set(
  tokensOf(
    'a an the my our your his her their its der das dem den ein eine einen mein meine meiner meinem meinen el un una mi mis',
  ),
);

/** “After ten minutes” is no change, but how long it takes. */
const LASTS =
  /\b(?:secs?|seconds?|sekunden?|segundos?|mins?|minutes?|minuten?|minutos?|hours?|hrs?|stunden?|horas?|km|miles?|while|bit|weile|rato)\b/;
/** So is what comes behind these, up to the end of its part. */
const LATELY = wordsOf('just recently freshly gerade frisch neulich kurzlich recien acabo yesterday gestern ayer');
/** So is all before these, and what comes behind them is what is wrong. */
const NOW = wordsOf('now jetzt nun ahora');
/** What comes behind these is what is wrong, too. */
const STILL = wordsOf('still trotzdem sigue');

/** Where a text begins with what happened, what is wrong begins with these: “after the rain no sound”. */
const TELLS = wordsOf('it no nothing one both everything kein keine nichts');

/** “Since then” begins with what is wrong. */
const THEN = wordsOf('then dann entonces ahi eso');

/** “Right now” and “just now” say when, not what was before. */
const MOMENT = wordsOf('right just');
/** Behind “just”, what happened: elsewhere it means no more than “only”. */
const HAPPENED = /^(?:\w+ed|put|got|had|bought|did|took|came|rode|ran|built|made|hung|new|back|out|home|after)$/;
/** Where “right” and “back” are no side and no place: “right away”, “comes right back”, “years back”. */
const TURNS = /left|right|back/i;
const AT_ONCE =
  /(?<!\b(?:front|rear|back|bag|lid|side|and|or) )\bright (?=(?:now|away|off the|from the|out of|after|when|as|before|where|near|around|about|at (?:the )?(?:top|max|full|half))\b)/gi;
const AGAIN =
  /\b(come|comes|came|coming|go|goes|going|went|gets?|flash|flashed|years|months|weeks|way) (?:right )?back\b(?! (?:left|right|speakers?|ones?|pair|seat))/gi;

/** Left and right are ways to go, too. */
const STEERED =
  /\b(steer\w*|turn\w*|bars?|handlebars?|lock|lean\w*)((?: (?:the|my|bars?|handlebars?|wheel|all|way|hard|full|fully|to|it|over))*) (?:left|right)\b(?! (?:now|away|front|rear|speaker|bag|lid|side))/gi;
/** Sides as a rider has them in hand. */
const IN_HAND = /throttle|clutch|stand/i;
const RIGHT_HAND = /\b(?:throttle|brake) (?:side|hand)\b/gi;
const LEFT_HAND = /\b(?:clutch|kickstand|sidestand) (?:side|hand)\b/gi;

/** The words of a text in their parts, each with whether it tells of the past. */
export function typedWords(text: string): readonly TypedWord[] {
  const typed: { -readonly [Key in keyof TypedWord]: TypedWord[Key] }[] = [];
  const turned = TURNS.test(text)
    ? text.replace(STEERED, '$1$2 sideways').replace(AT_ONCE, 'just ').replace(AGAIN, '$1 again')
    : text;
  const held = IN_HAND.test(turned) ? turned.replace(RIGHT_HAND, 'right side').replace(LEFT_HAND, 'left side') : turned;
  const plain = meantSide(respelt(held));
  const parts = plain.split(MARKS);
  const last = parts.findLastIndex((told) => /\w/.test(told));
  for (const [part, told] of parts.entries()) {
    let past = false;
    const all = tokensOf(told);
    for (const [i, word] of all.entries()) {
      const changed = NOW.has(word) && !MOMENT.has(all[i - 1] ?? '');
      // Behind all else they say no more than that it is so, unlike what stands in a part before: “lid was off, rear dead now”.
      const ends = i === all.length - 1;
      if (changed || (ends && SINCE.has(word)))
        for (const before of typed) if (!ends || before.part < part) before.past = true;
      const sinceThen = i === 0 && part > 0 && (word === 'seitdem' || (SINCE.has(word) && THEN.has(all[1] ?? '')));
      if (sinceThen) for (const before of typed) before.past = true;
      if (changed || STILL.has(word)) past = false;
      if (past && part === 0 && i > 2 && SINCE.has(all[0] ?? '') && TELLS.has(word)) past = false;
      typed.push({
        word,
        part,
        past,
        light: LIGHT.has(word),
        told: toldOf(all, i, { last: part === last, first: part === 0 }),
      });
      if (
        (SINCE.has(word) && !sinceThen && !LASTS.test(all.slice(i + 1, i + 4).join(' '))) ||
        (LATELY.has(word) && (word !== 'just' || HAPPENED.test(all[i + 1] ?? '')))
      )
        past = true;
    }
  }
  return typed;
}
