import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const wasReflashed: ChoiceStep<'yes' | 'no'> = choice({
  place: 'told',
  id: 'was-reflashed',
  short: 'Reflashed for an amplifier',
  ask: 'Was the head unit ever reflashed for an amplifier, as far as you know?',
  phone: 'Was the radio ever reflashed or coded for an amplifier, by a dealer or a specialist, as far as you know?',
  how: ['A job card, a bill, or the word of whoever fitted the amplifier.'],
  why: 'A profile for amplifiers and one that was never changed may both follow the engine. What you do about it differs.',
  tool: 'none',
  minutes: 0.3,
  sensible: (f) => !is(f, 'unit-kind', 'replaced'),
  observes: [],
  ifCannot: 'Bought like this: skip it.',
  options: { yes: 'Yes, it was', no: 'No, never' },
  outcomes: { yes: 'reflashed', no: 'never reflashed' },
});
