import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const wasReflashed: ChoiceStep<'yes' | 'no'> = choice({
  place: 'told',
  id: 'was-reflashed',
  short: 'Reflashed for an amplifier',
  ask: 'Was the head unit ever reflashed for an amplifier, as far as you know?',
  phone: 'Was the radio ever reflashed or coded for an amplifier, by a dealer or a specialist, as far as you know?',
  how: ['A work order, a bill, or the word of whoever fitted the amplifier.'],
  why: 'A profile for amplifiers and one that was never changed both may follow the engine. What is done about it is not the same.',
  tool: 'none',
  minutes: 0.3,
  sensible: (f) => !is(f, 'unit-kind', 'replaced'),
  observes: [],
  ifCannot: 'Bought like this: we go on without.',
  options: { yes: 'Yes, it was', no: 'No, never' },
  outcomes: { yes: 'reflashed', no: 'never reflashed' },
});
