import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { goesOffAtTimes, showsFault } from './seen-on.ts';

export const recover: ChoiceStep<'at-once' | 'after-minutes' | 'key-cycle' | 'stays'> = choice({
  place: 'amplifier',
  id: 'recover',
  short: 'How it comes back',
  ask: 'How does the amplifier come back: at once by itself, after minutes, after key off and on, or not at all?',
  phone:
    'The back of your hand near its case first. Then wait: does it come back by itself within seconds, again and again, or after minutes? Only after ten minutes key off and on: does it come back then? Or is its fault lamp there at once each time?',
  how: [
    'Back of a hand near its case first: too hot to leave there means heat.',
    'Turn the volume down and wait, up to ten minutes.',
    'Not back: key off for a minute, key on.',
  ],
  why: 'Volts that dip come back at once. Heat needs minutes. A short holds until the key is turned, and comes again.',
  tool: 'none',
  minutes: 4,
  conditions: ['head-unit-playing'],
  sensible: (f) => ampMayBeThere(f) && (showsFault(f) || goesOffAtTimes(f)),
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['hot', 'into-a-short'],
  options: {
    'at-once': 'By itself within seconds, again and again',
    'after-minutes': 'By itself after minutes, when cooler',
    'key-cycle': 'Only after key off and on, if at all',
    stays: 'Fault lamp at once, each time',
  },
  outcomes: {
    'at-once': 'back at once',
    'after-minutes': 'back when cooler',
    'key-cycle': 'only by the key',
    stays: 'fault lamp each time',
  },
});
