import { theAmp } from '../fitted/the-amp.ts';
import { answeredWith, is } from '../outcome.ts';
import { type ChoiceStep, choice, type Situation } from '../step.ts';
import { fuseStaysOut, supplyMayFail } from './may-fail.ts';

/** What comes in with the signal wakes some amplifiers; of others nobody knows. */
function signalPlugToo(situation: Situation): readonly string[] {
  const { turnOn } = theAmp(situation);
  if (turnOn === 'wire') return [];
  return [
    turnOn === undefined
      ? 'The signal plug too, where no remote wire runs to the amplifier.'
      : 'The signal plug too: this amplifier wakes by what comes in there.',
  ];
}

/** An amplifier without a light tells by its sound. */
const isDark = ({ facts }: Situation): boolean => answeredWith(facts, 'amp-light', 'none');
const reaction = (s: Situation): string =>
  isDark(s) ? 'the amplifier cut in or out' : 'the amplifier’s light flicker';

export const supplyWiggle: ChoiceStep<
  'no-effect' | 'battery' | 'holder' | 'lead' | 'terminal' | 'ground' | 'remote' | 'input'
> = choice({
  place: 'supply',
  id: 'supply-wiggle',
  short: 'Press its power leads',
  ask: (s) => `Head unit on: does ${reaction(s)} when you press the rings, the fuse holder or a plug with one finger?`,
  phone: (s) =>
    `Push gently with one finger, no tools, nothing hot: battery rings, fuse, the thick positive lead along its length, any connector in it, and at the amplifier, the ground, the thin wires. At which one ${isDark(s) ? 'does the amplifier cut in or out' : 'does the amplifier’s light flicker'}, or which has come out? Or none?`,
  how: (s) => [
    'Volume low. One finger, no metal tools.',
    'Battery rings, fuse holder, the positive lead along its length and any connector in it, positive and ground at the amplifier, the other end of the ground, the remote wire.',
    'Fuse holder and lead separately: hold one still while you press the other.',
    ...signalPlugToo(s),
    'A plug or a wire that has come out is an answer: name it, and leave it out until the key is off.',
  ],
  why: 'Where it reacts to a finger, the contact is bad. No reaction proves nothing.',
  tool: 'none',
  minutes: 5,
  conditions: ['amp-uncovered', 'head-unit-playing'],
  // With its fuse blown there is no lamp that could flicker.
  sensible: (f) => supplyMayFail(f) && !fuseStaysOut(f) && !is(f, 'fuse-look', 'blown'),
  observes: ['unit-leads', 'amp-supply', 'amp'],
  cautions: ['wakes-loud'],
  options: {
    'no-effect': 'Nothing reacts',
    battery: 'A ring at the battery',
    holder: 'The fuse or its holder',
    lead: 'The positive lead, when bent along its length, or a connector in it',
    terminal: 'The positive lead where it enters the amplifier',
    ground: 'The ground lead',
    remote: 'The remote wire, or it has come out',
    input: 'The signal plug, or it has come out',
  },
  outcomes: {
    'no-effect': 'nothing reacts',
    battery: 'a battery ring reacts',
    holder: 'fuse holder reacts',
    lead: 'positive lead reacts',
    terminal: 'positive terminal reacts',
    ground: 'ground lead reacts',
    remote: 'remote wire reacts, or is out',
    input: 'signal plug reacts, or is out',
  },
});
