import { fixedOne } from '../both.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const unitFlat: ChoiceStep<'cured' | 'was-up' | 'no-change'> = choice({
  place: 'settings',
  id: 'unit-flat',
  short: 'Head unit tone controls flat',
  ask: 'Head unit’s bass and treble at zero, loudness off: is it clean at that volume now?',
  phone:
    'In the sound menu of the radio write down what is set now. Then bass and treble to zero, loudness and speed volume off. Play it just as loud: clean now? If not: was anything well up, or was it all about flat?',
  how: ['Write down what is set now.', 'Bass, mid and treble at 0, loudness off, speed volume off. As loud as before.'],
  why: 'Ten decibels more bass take ten times the power. Whatever has least to spare clips first.',
  tool: 'none',
  minutes: 1.5,
  conditions: ['ugly-step'],
  observes: EVERY_PART,
  both: fixedOne,
  options: {
    cured: 'Yes, clean now',
    'was-up': 'No, though loudness was on or bass well up',
    'no-change': 'No, it was about flat already',
  },
  outcomes: { cured: 'clean now', 'was-up': 'was up, distorts flat too', 'no-change': 'about flat already' },
});
