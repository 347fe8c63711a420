import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { goesOffAtTimes, showsFault } from './seen-on.ts';

export const recover: ChoiceStep<'at-once' | 'after-minutes' | 'key-cycle' | 'stays'> = choice({
  place: 'amplifier',
  id: 'recover',
  short: 'How it comes back',
  ask: 'How does the amplifier come back: at once by itself, after some minutes, after turning the key off and on, or not at all?',
  phone:
    'First the back of your hand near its case. Then wait: does it come back by itself within seconds, again and again, or after some minutes? If not in ten minutes, key off and on: does it come back then? Or is the fault light back at once every time?',
  how: [
    'Back of your hand near its case first: too hot to keep it there means heat.',
    'Turn the volume down and wait, up to ten minutes.',
    'Still off: key off for a minute, then on.',
  ],
  why: 'A dip in the supply recovers at once. Heat takes minutes. A short latches until the key is turned, and trips again.',
  tool: 'none',
  minutes: 4,
  conditions: ['head-unit-playing'],
  sensible: (f) => ampMayBeThere(f) && (showsFault(f) || goesOffAtTimes(f)),
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['hot', 'into-a-short'],
  options: {
    'at-once': 'By itself within seconds, again and again',
    'after-minutes': 'By itself after some minutes, once cooler',
    'key-cycle': 'Only after turning the key off and on, if at all',
    stays: 'Fault light at once, every time',
  },
  outcomes: {
    'at-once': 'back at once',
    'after-minutes': 'back once cooler',
    'key-cycle': 'only with the key',
    stays: 'fault light every time',
  },
});
