import { type ChoiceStep, choice } from '../step.ts';

export const toldOrRead: ChoiceStep<'read' | 'told'> = choice({
  place: 'plan',
  id: 'told-or-read',
  short: 'Which to trust',
  ask: 'What you were told and what the meter read do not agree. Which do you trust?',
  phone:
    'What you told me and what the meter says do not agree. Were bass and treble flat when you read it? Which of the two do you trust?',
  how: [
    'Trust the reading if bass and treble were flat, loudness and speed volume off, and no equaliser on in the phone.',
    'Trust a paper if it names this head unit, is newer than the last work on it, and the reading was rushed.',
  ],
  why: 'One of them is wrong. A careful reading beats both paper and memory.',
  tool: 'none',
  minutes: 0.5,
  observes: ['profile'],
  options: { read: 'The reading: everything was flat', told: 'What I was told: the reading was rushed' },
  outcomes: { read: 'the reading', told: 'what was told' },
  ifCannot: 'Then we leave both open, and the verdict says what to read again.',
  givenUnder: [
    'profile-source',
    'paper-boosted',
    'paper-lowered',
    'paper-rear',
    'paper-same-eq',
    'tones-off',
    'rear-pair',
    'tones-running',
    'top-step',
  ],
});
