import { type ChoiceStep, choice } from '../step.ts';

export const wrongNow: ChoiceStep<'no' | 'rear-silent' | 'other'> = choice({
  place: 'plan',
  id: 'wrong-now',
  short: 'Wrong now',
  ask: 'Is anything wrong with the sound now?',
  phone: 'Forget what others said. Is there anything about the sound that bothers you today?',
  how: ['Your own ears count. A wish is not a fault.'],
  why: 'If nothing is wrong and nothing is wished for, there is nothing to do, whatever is stored in the head unit.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  options: { no: 'No, nothing', 'rear-silent': 'The rear is silent', other: 'Yes, something else' },
  outcomes: { no: 'nothing wrong', 'rear-silent': 'rear silent', other: 'something is wrong' },
  givenUnder: ['planned-change'],
});
