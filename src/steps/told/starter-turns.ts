import { goesOffAtTimes } from '../amplifier/seen-on.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const starterTurns: ChoiceStep<'brisk' | 'slow'> = choice({
  place: 'told',
  id: 'starter-turns',
  short: 'The starter',
  ask: 'Does the starter spin the engine as briskly as it used to?',
  phone:
    'Starting it cold, the first time in the day: does the starter spin as briskly as ever? Or slower than it used to, or do the lights go dim?',
  how: ['From memory will do: the first start of the day.'],
  why: 'The starter asks more of the battery than any music does. One that is worn or never full shows there first.',
  tool: 'none',
  minutes: 0.3,
  // Full volts at an amplifier that stays dark: its battery is not to blame.
  sensible: (f) => !is(f, 'amp-terminals', 'ok') || goesOffAtTimes(f),
  observes: ['amp-supply'],
  options: { brisk: 'As briskly as ever', slow: 'Slower than it used to, or the lights go dim' },
  outcomes: { brisk: 'as brisk as ever', slow: 'slower than it used to be' },
});
