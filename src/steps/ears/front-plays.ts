import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const frontPlays: ChoiceStep<'plays' | 'weak' | 'one-side' | 'silent'> = choice({
  place: 'ears',
  id: 'front-plays',
  short: 'The front, just now',
  ask: 'Are the front speakers playing as they always have?',
  phone: 'Is the front playing as always, weakly, on one side only, or not at all?',
  how: ['Music at the volume you usually ride with.', 'An ear at each front grille, left and right.'],
  why: 'If the front plays, the source is live. On an amplifier for front and rear it proves power, ground and turn-on as well.',
  tool: 'ears',
  minutes: 0.5,
  conditions: ['head-unit-playing'],
  observes: EVERY_PART,
  options: {
    plays: 'Yes, as always',
    weak: 'Yes, but weakly on both sides',
    'one-side': 'On one side only',
    silent: 'No, nothing from the front',
  },
  outcomes: { plays: 'plays as always', weak: 'plays weakly', 'one-side': 'one side only', silent: 'silent too' },
});
