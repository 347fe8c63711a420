import { type ChoiceStep, choice } from '../step.ts';

export const toldOrRead: ChoiceStep<'read' | 'told'> = choice({
  place: 'plan',
  id: 'told-or-read',
  short: 'What counts',
  ask: 'What you were told and what the meter read do not agree. Which of them counts?',
  phone: 'What you told me and what the meter says do not agree. Were bass and treble flat when you read it?',
  how: [
    'The reading counts if bass and treble stood flat, loudness and speed volume were off, and the phone had no equaliser on.',
    'A paper counts if it names this head unit and is newer than the last work on it, and the reading was hasty.',
  ],
  why: 'One of them is wrong. A reading that was taken with care beats a paper and memory.',
  tool: 'none',
  minutes: 0.5,
  observes: ['profile'],
  options: { read: 'The reading: everything stood flat', told: 'What I was told: the reading was hasty' },
  outcomes: { read: 'the reading', told: 'what was told' },
  ifCannot: 'Then both stay open, and the verdict says what to read again.',
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
