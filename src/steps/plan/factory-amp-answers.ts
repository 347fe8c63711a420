import { type ChoiceStep, choice } from '../step.ts';

export const factoryAmpAnswers: ChoiceStep<'yes' | 'no'> = choice({
  place: 'plan',
  id: 'factory-amp-answers',
  short: 'Factory amplifier answers',
  ask: 'Does the factory amplifier answer on the data bus?',
  phone: 'The bike maker’s amplifier: does the dealer’s tool find it, or has it been playing all along?',
  how: ['Ask whoever has the tool whether it lists the amplifier. If it plays as it always did, it answers.'],
  why: 'Until it answers, a dealer’s tool will not select an amplified profile. Sort the amplifier out first.',
  tool: 'none',
  minutes: 0.5,
  observes: ['amp', 'amp-supply'],
  options: { yes: 'Yes, or it plays as always', no: 'No, the tool does not find it' },
  outcomes: { yes: 'answers', no: 'does not answer' },
  ifCannot: 'Not fitted yet, or not tried: have it looked at before you pay.',
});
