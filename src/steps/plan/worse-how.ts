import { type ChoiceStep, choice } from '../step.ts';

export type WorseHow = 'quiet-thin' | 'rear-silent' | 'harsh' | 'bass-with-engine' | 'amp-off' | 'other';

export const worseHow: ChoiceStep<WorseHow> = choice({
  place: 'plan',
  id: 'worse-how',
  short: 'Worse how',
  ask: 'What got worse after the reflash?',
  phone:
    'Since the reflash: is the back silent, does an amplifier stay off, is it quieter and thinner, is it harsh, does the bass go with the engine, or something else?',
  how: [
    'Compare at a standstill, engine off, bass and treble flat.',
    'Several? Pick the first one in the list that is true.',
  ],
  why: 'Each profile leaves its own mark: lowered without an amplifier it is quiet and thin, full with an amplifier it is harsh.',
  tool: 'ears',
  minutes: 1,
  observes: ['profile', 'settings'],
  options: {
    'rear-silent': 'The rear is silent',
    'amp-off': 'An amplifier stays off',
    'quiet-thin': 'Quieter and thinner',
    harsh: 'Harsh, or the bass breaks up when loud',
    'bass-with-engine': 'The bass goes when the engine starts',
    other: 'Something else',
  },
  outcomes: {
    'rear-silent': 'rear silent',
    'amp-off': 'an amplifier stays off',
    'quiet-thin': 'quieter and thinner',
    harsh: 'harsh when loud',
    'bass-with-engine': 'bass goes with the engine',
    other: 'something else',
  },
  givenUnder: ['planned-change'],
});
