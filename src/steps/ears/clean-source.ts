import { firstOf } from '../both.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const cleanSource: ChoiceStep<'good' | 'same'> = choice({
  place: 'ears',
  id: 'clean-source',
  short: 'Another source',
  ask: 'Radio or a memory stick, just as loud: is it clean there?',
  phone: 'Leave the phone out of it: play the radio or a memory stick just as loud. Clean, or just as distorted?',
  how: ['Match it by ear, not by number: sources differ in level.', 'A few seconds, ears covered.'],
  why: 'If only the phone distorts, it is the phone that does it.',
  tool: 'ears',
  compares: true,
  minutes: 2,
  conditions: ['ugly-step'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  both: firstOf('same', 'good'),
  options: { good: 'Clean there', same: 'Just as distorted' },
  outcomes: { good: 'clean there', same: 'the same' },
  ifCannot: 'No other source here: skip it.',
});
