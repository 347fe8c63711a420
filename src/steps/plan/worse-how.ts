import { type ChoiceStep, choice } from '../step.ts';

export type WorseHow = 'quiet-thin' | 'rear-silent' | 'harsh' | 'bass-with-engine' | 'amp-off' | 'other';

export const worseHow: ChoiceStep<WorseHow> = choice({
  place: 'plan',
  id: 'worse-how',
  short: 'Worse how',
  ask: 'What got worse after the reflash?',
  phone: 'Since the reflash: is it quieter and thinner, is the back silent, is it harsh, or what else?',
  how: [
    'Compare at a standstill, engine off, bass and treble flat.',
    'Several of them? Take the first one in the list that is true.',
  ],
  why: 'Each profile leaves its own mark: a lowered level without an amplifier is quiet and thin, a full one in front of an amplifier is harsh.',
  tool: 'ears',
  minutes: 1,
  observes: ['profile', 'settings'],
  options: {
    'rear-silent': 'The rear is silent',
    'amp-off': 'An amplifier stays off',
    'quiet-thin': 'Quieter and thinner',
    harsh: 'Harsh, or the bass breaks up when loud',
    'bass-with-engine': 'Bass goes when the engine starts',
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
