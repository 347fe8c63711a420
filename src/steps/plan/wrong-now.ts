import { type ChoiceStep, choice } from '../step.ts';

export const wrongNow: ChoiceStep<'no' | 'rear-silent' | 'other'> = choice({
  place: 'plan',
  id: 'wrong-now',
  short: 'Wrong now',
  ask: 'Is anything wrong with the sound now?',
  phone:
    'Forget what anybody said. Does anything about the sound bother you today: the back silent, something else, or nothing?',
  how: ['Your own ears count. Wanting more is not a fault.'],
  why: 'If nothing is wrong and you want nothing more, there is nothing to do, whatever is stored in the head unit.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  options: { no: 'No, nothing', 'rear-silent': 'The rear is silent', other: 'Yes, something else' },
  outcomes: { no: 'nothing wrong', 'rear-silent': 'rear silent', other: 'something is wrong' },
  givenUnder: ['planned-change'],
});
