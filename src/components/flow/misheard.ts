import { offered } from '../../steps/outcome.ts';
import { inWords, type Situation, type Step } from '../../steps/step.ts';

/** What a caller says and what he may mean, and how to make sure. Common practice on the phone, no published source. */
interface Mishearing {
  /** What the answers have to say for it to be heard among them. */
  readonly answers: RegExp;
  /** What the question or its answers have to be about besides. */
  readonly about?: RegExp;
  readonly says: string;
}

const BOXES: Mishearing = {
  answers: /\b(amplifiers?|head unit|radio)\b/i,
  about: /\bamplifiers?\b/i,
  says: 'Many people call any box an amplifier, even the radio. Have him say where it is and how thick its leads are.',
};

/** By the words of the answers, the first that fits: only a word that he may say can be misheard. */
const HEARD: readonly Mishearing[] = [
  {
    answers: /\b(whole|burnt through)\b/i,
    about: /\bfuses?\b/i,
    says: '“Looks fine” is not “whole”. Have him hold it up to the light, say what the strip looks like, and read the number on it.',
  },
  {
    answers: /\b(off|out|dark|normal)\b/i,
    about: /\b(lamp|lights?|bulb|screen)\b/i,
    says: '“Off” may be a light he cannot see in the sun. Have him shade it with his hand and say what colour it is.',
  },
  {
    answers: /\b(plugs?|pins?|connectors?|home|connected|come out|apart|place is empty)\b/i,
    about: /\b(plugs?|pins?|connectors?|adapter)\b/i,
    says: '“It is in” is not “it clicked”. Have him tug it gently and say whether it gave.',
  },
  {
    answers: /\b(remote|wires?|line-level|leads?)\b/i,
    says: '“A wire” may be any wire. Have him say how thick it is, what colour, and what is printed next to its terminal.',
  },
  {
    answers:
      /\b(left|right(?! (now|down|through))|one side|whole side|one rear corner|the other one|the same speaker)\b/i,
    about: /\b(left|right(?! (now|down|through)))\b/i,
    says: 'Left and right swap when he stands in front of the bike. Have him say them as if sitting on it.',
  },
  {
    answers: /\b(hiss|clicks?|thump|crackle)\b/i,
    says: '“Nothing” may be too much noise around him. Have him switch everything else off and listen again.',
  },
  {
    answers: /\b(plays?|silent)\b/i,
    about: /\b(back|rear)\b/i,
    says: '“It plays” may mean the front. Have him say where he is standing and which grille his ear is at.',
  },
  BOXES,
  {
    answers: /\b(loud|louder|quiet|quieter|volume)\b/i,
    says: '“Loud” means something different to everybody. Have him say the volume number.',
  },
];
/** What was done before is told in a word, and is seldom all of it. */
const DEEDS: Readonly<Record<string, string>> = {
  'last-change':
    '“Nothing” is often “nothing on the sound”. Have him think of a wash, a service, a battery, a fall, anything that came off.',
  'tried-already': '“Everything” is not an answer. Have him name each thing he did, and what happened then.',
};
const ANY = 'A bare yes or no may not answer the question you asked. Have him say the whole answer in his own words.';

const NUMBERS = {
  Ω: '“One” at the left edge, or OL, is an open circuit, not one ohm. Have him read each digit and the point, and say whether there is a k or an M.',
  V: '“Twelve” may be “one point two”. Have him read each digit and the point, and say whether it is V or mV, and whether there is a minus.',
} as const;

/** What is easily misheard of the answer to a step, and how to check it. */
export function misheard(step: Step, situation: Situation): string {
  if (step.kind === 'reading')
    return Object.values(step.readings).some(({ unit }) => unit === 'Ω') ? NUMBERS.Ω : NUMBERS.V;
  const deeds = DEEDS[step.id];
  if (deeds !== undefined) return deeds;
  const answers = offered(step, situation)
    .map(([, label]) => label)
    .join(' ');
  const text = `${answers} ${inWords(step.ask, situation)}`;
  // What is fitted is asked of boxes, whichever speakers they drive.
  if (step.place === 'fitted' && BOXES.about?.test(text)) return BOXES.says;
  return HEARD.find((one) => one.answers.test(answers) && one.about?.test(text) !== false)?.says ?? ANY;
}
