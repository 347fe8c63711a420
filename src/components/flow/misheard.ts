import { offered } from '../../steps/outcome.ts';
import { inWords, type Situation, type Step } from '../../steps/step.ts';

/** What a caller says and what he may mean, and how to make sure. Common practice on the phone, no published source. */
interface Mishearing {
  readonly of: RegExp;
  readonly says: string;
}

const BOXES: Mishearing = {
  of: /\b(amplifiers?|head unit|radio)\b/i,
  says: 'Many call every box an amplifier, and the radio, too. Have him say where it sits, and how thick its leads are.',
};

/** By the words of a question and its answers, the first that fits. */
const HEARD: readonly Mishearing[] = [
  {
    of: /\bfuse\b/i,
    says: '“Looks fine” is not “whole”. Have him hold it against the sky and say what the strip looks like, and read the number on it.',
  },
  {
    of: /\b(lamp|light|lights|bulb)\b/i,
    says: '“Off” may be a lamp that he cannot see in the sun. Have him shade it with a hand, and name its colour.',
  },
  {
    of: /\b(plug|pin|connector|adapter)s?\b/i,
    says: '“It is in” is not “it clicked”. Have him pull at it gently, and say whether it gave.',
  },
  {
    of: /\b(remote|thin wire|speaker wires|line-level|shielded)\b/i,
    says: '“A wire” may be any wire. Have him say how thick it is, its colour, and what is printed beside its terminal.',
  },
  {
    of: /\b(left|right)\b/i,
    says: 'Left and right change when he stands in front of the bike. Have him say them as somebody who sits on it.',
  },
  {
    of: /\b(hiss|click|thump|crackle)\b/i,
    says: '“Nothing” may be too much noise around him. Have him switch everything else off, and listen once more.',
  },
  {
    of: /\b(back|rear|front|plays?)\b/i,
    says: '“It plays” may mean the front. Have him say where he stands and which grille is in front of his ear.',
  },
  BOXES,
  {
    of: /\b(loud|quiet|volume)\b/i,
    says: '“Loud” is another thing to everybody. Have him say the number on the volume scale.',
  },
];
const ANY =
  'A bare yes or no may answer another question than the one you asked. Have him say the whole answer in his own words.';

const NUMBERS = {
  Ω: '“One” at the left edge, or OL, is an open circuit and not one ohm. Have each digit read with its point, and whether a k or an M stands beside it.',
  V: '“Twelve” may be “one point two”. Have each digit read with its point, and whether V or mV stands beside it, and a minus before it.',
} as const;

/** What is easily misheard of the answer to a step, and how to check it. */
export function misheard(step: Step, situation: Situation): string {
  if (step.kind === 'reading')
    return Object.values(step.readings).some(({ unit }) => unit === 'Ω') ? NUMBERS.Ω : NUMBERS.V;
  const answers = offered(step, situation).map(([, label]) => label);
  const text = [...answers, inWords(step.ask, situation)].join(' ');
  // What is fitted is asked of boxes, whichever speakers they drive.
  if (step.place === 'fitted' && BOXES.of.test(text)) return BOXES.says;
  return HEARD.find(({ of }) => of.test(text))?.says ?? ANY;
}
