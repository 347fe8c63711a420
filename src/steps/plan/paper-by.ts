import { type ChoiceStep, choice } from '../step.ts';

export const paperBy: ChoiceStep<'dealer' | 'dealer-factory-amp' | 'specialist'> = choice({
  place: 'plan',
  id: 'paper-by',
  short: 'Paper: done by',
  ask: 'Who selected that profile?',
  phone: 'Who did the work on that paper: a dealer, or an independent specialist?',
  how: ['The stamp or the letterhead says it. Ask whether a factory amplifier was on the bike at that time.'],
  why: 'A dealer’s tool selects an amplified profile only if a factory amplifier answers on the data bus.',
  tool: 'papers',
  minutes: 0.5,
  observes: ['profile'],
  options: {
    dealer: 'A dealer, and no factory amplifier was fitted',
    'dealer-factory-amp': 'A dealer, with a factory amplifier fitted then',
    specialist: 'An independent specialist',
  },
  outcomes: {
    dealer: 'a dealer, without a factory amplifier',
    'dealer-factory-amp': 'a dealer, with a factory amplifier',
    specialist: 'an independent specialist',
  },
  ifCannot: 'Then we take the paper at its word.',
  givenUnder: ['profile-source'],
});
