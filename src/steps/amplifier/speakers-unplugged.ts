import { ampMayBeThere } from '../fitted/amp-there.ts';
import { answeredWith } from '../outcome.ts';
import { type ChoiceStep, choice, type Situation } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';
import { mayProtectItself } from './seen-on.ts';

/** A fault light that goes dark had a load to trip on, and has no supply or no turn-on to start with. */
const mayGoDark = ({ facts }: Situation): boolean => answeredWith(facts, 'amp-light', 'fault');

export const speakersUnplugged: ChoiceStep<'clears' | 'stays' | 'dark'> = choice({
  place: 'amplifier',
  id: 'speakers-unplugged',
  short: 'All speakers off the amplifier',
  ask: 'Key off, all speaker plugs off the amplifier, key on: is its light normal now?',
  phone: (s) =>
    `Look at the amplifier’s light: is it normal now, or still the fault colour or blinking${mayGoDark(s) ? ', or off' : ''}?`,
  how: ['Look at its light. No light to see: a click or soft thump that was not there before counts as normal.'],
  why: 'A light that clears with the speakers off points to a run or a coil. One that stays points to the amplifier or its supply.',
  tool: 'none',
  minutes: 4,
  conditions: ['amp-uncovered', 'amp-outputs-off', 'head-unit-playing'],
  sensible: (f) => ampMayBeThere(f) && !fuseStaysOut(f) && mayProtectItself(f),
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  options: { clears: 'Yes, normal now', stays: 'No, still the fault light, or blinking', dark: 'No, it is off now' },
  leftOut: (s) => (mayGoDark(s) ? [] : ['dark']),
  outcomes: { clears: 'clears without speakers', stays: 'stays without speakers', dark: 'off without speakers' },
});
