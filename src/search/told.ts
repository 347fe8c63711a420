import { SINCE } from './since.ts';
import { wordsOf } from './tokens.ts';

/** Whether there is what a word stands for, none of it, or somebody only asks for it. */
export type Told = 'is' | 'none' | 'asked';

/** Where a word stands: whether in the last part of its text, and whether in another than the first. */
interface Where {
  readonly last: boolean;
  readonly first: boolean;
}

/** What the rules look for where there is none of a thing. */
export const noneOf = (word: string): string => `no${word}`;

/** The things of which it matters whether there are any. */
const THINGS = /^(?:amps?|amplifiers?|ampli|verstarkers?|endstufen?|amplificador(?:es)?)$/;
/** What says before a thing that there is none, with what may stand between. */
const NO = wordsOf(
  'no without kein keine keinen ohne sin zero dont doesnt didnt isnt havent hasnt aint nicht never ningun',
);
const CALLED = wordsOf(
  `a an any one the single have has had got get own separate external extra outboard front rear back factory stock original
   aftermarket such kind of sort ein eine einen un for tengo tiene hay hat is there`,
);
/** So many words may stand between. */
const MOST_BETWEEN = 4;
/** A thing that only names another: “no amp light”. */
const NAMES = wordsOf(
  'light lights led lamp power sound fuse fuses output signal remote fault issue issues problem problems profile',
);
function isNone(all: readonly string[], at: number): boolean {
  if (!THINGS.test(all[at] ?? '') || NAMES.has(all[at + 1] ?? '')) return false;
  let before = at - 1;
  while (before >= at - MOST_BETWEEN && CALLED.has(all[before] ?? '')) before--;
  return NO.has(all[before] ?? '');
}

/** What is done to a head unit. */
const DONE = /flash|flasch|^(?:re|um)?(?:program|map|tun[ei]|cod(?:e|ing)|updat)/;
const WAS_DONE = /(?:ed|asht|aron)$/;
/** What says that somebody asks whether it has to be done: before it, and behind it. */
const ASKED = wordsOf(
  `need needs needed needing must should shall require requires required do does would will can could have to if worth
   another told says said is want wants without before sell either which what why maybe brauch brauche braucht muss mussen
   sagt meint necesito necesita ocupo ocupa hace hay toca dice dicen`,
);
const ASKED_BEHIND = wordsOf(
  'needed need required necessary necesary notig yes or cure help helps fix worth needs necesario wanted back again',
);
/** It was done, or it is a lamp that does it, where these stand before it. */
const WAS = wordsOf('tried was were been had has got gave they dealer never nobody not light led lamp red keeps');
/** So far before it, and behind it. */
const BEFORE = 6;
const BEHIND = 3;
function isAsked(all: readonly string[], at: number, { last, first }: Where): boolean {
  const word = all[at] ?? '';
  if (!DONE.test(word)) return false;
  const before = all.slice(Math.max(0, at - BEFORE), at);
  const was = before.findLastIndex((one) => SINCE.has(one) || WAS.has(one));
  if (before.some((one, i) => i > was && ASKED.has(one))) return true;
  if (WAS_DONE.test(word) || was >= 0) return false;
  const behind = all.slice(at + 1, at + 1 + BEHIND);
  if (behind.some((next) => ASKED_BEHIND.has(next))) return true;
  // “Adding an amp, flash it?”, “adding an amp flash”, “flash to use the phone”
  return (
    (last && at === all.length - 1) || (at === 0 && ((last && !first) || behind[0] === 'to' || behind[0] === 'so'))
  );
}

/** What is told of one of the words of a part of a text. */
export const toldOf = (all: readonly string[], at: number, where: Where): Told =>
  isNone(all, at) ? 'none' : isAsked(all, at, where) ? 'asked' : 'is';
