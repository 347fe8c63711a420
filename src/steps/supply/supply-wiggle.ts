import { theAmp } from '../fitted/the-amp.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseStaysOut, supplyMayFail } from './may-fail.ts';

export const supplyWiggle: ChoiceStep<
  'no-effect' | 'battery' | 'holder' | 'lead' | 'terminal' | 'ground' | 'remote' | 'input'
> = choice({
  place: 'supply',
  id: 'supply-wiggle',
  short: 'Press its power leads',
  ask: 'Head unit on: does the lamp flicker when you press the rings, the fuse holder or a plug with one finger?',
  phone:
    'Push gently with one finger, no tools, nothing hot: battery rings, fuse, the thick plus along its way and at the amplifier, the ground, the thin wires. Which one makes the lamp flicker, or hangs out? Or none?',
  how: (s) => [
    'Volume low. One finger, no metal tools.',
    'Battery rings, fuse holder, the plus lead along its way, plus and ground at the amplifier, the other end of the ground, the remote wire.',
    'Fuse holder and lead one by one: hold the one still while you press the other.',
    ...(theAmp(s).turnOn === 'wire' ? [] : ['The signal plug, too: it is what this amplifier listens to.']),
    'A plug or a wire that hangs out is an answer: name it, and leave it out until the key is off.',
  ],
  why: 'What reacts to a finger is where the contact is bad. What does not react proves nothing.',
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
    lead: 'The plus lead, as it is bent along its way',
    terminal: 'The plus lead where the amplifier holds it',
    ground: 'The ground lead',
    remote: 'The remote wire, or it hangs out of its terminal',
    input: 'The signal plug, or it hangs out',
  },
  outcomes: {
    'no-effect': 'nothing reacts',
    battery: 'a battery ring reacts',
    holder: 'fuse holder reacts',
    lead: 'plus lead reacts',
    terminal: 'plus terminal reacts',
    ground: 'ground lead reacts',
    remote: 'remote wire reacts, or hangs out',
    input: 'signal plug reacts, or hangs out',
  },
});
