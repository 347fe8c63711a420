import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const unitFlat: ChoiceStep<'cured' | 'no-change'> = choice({
  place: 'settings',
  id: 'unit-flat',
  short: 'Tone controls of the head unit flat',
  ask: 'Bass, treble and loudness of the head unit at zero or off: is it clean at that volume now?',
  phone:
    'In the sound menu of the radio: bass and treble to zero, loudness and speed volume off. Play it just as loud: clean now, or no change?',
  how: [
    'Write down what is set now.',
    'Bass, middle and treble at 0, loudness off, speed volume off. As loud as before.',
  ],
  why: 'Ten decibels of bass take ten times the power. Whatever has the least to spare is cut off first.',
  tool: 'none',
  minutes: 1.5,
  conditions: ['ugly-step'],
  observes: EVERY_PART,
  options: { cured: 'Yes, clean now', 'no-change': 'No change, or all was flat already' },
  outcomes: { cured: 'clean now', 'no-change': 'no change' },
});
