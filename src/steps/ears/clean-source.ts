import { type ChoiceStep, choice } from '../step.ts';

export const cleanSource: ChoiceStep<'good' | 'same'> = choice({
  place: 'ears',
  id: 'clean-source',
  short: 'Another source',
  ask: 'Radio or a memory stick, just as loud: is it clean there?',
  phone: 'Take the phone out of it: play the radio or a memory stick just as loud. Clean, or just as ugly?',
  how: ['As loud to the ear, not the same number: sources differ.', 'A few seconds, ears covered.'],
  why: 'What is ugly only from the phone is made ugly in the phone.',
  tool: 'ears',
  minutes: 2,
  conditions: ['ugly-step'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  options: { good: 'Clean there', same: 'Just as ugly' },
  outcomes: { good: 'clean there', same: 'the same' },
  ifCannot: 'No other source here: go on without.',
});
