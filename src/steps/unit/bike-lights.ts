import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const bikeLights: ChoiceStep<'bright' | 'weak' | 'dark'> = choice({
  place: 'unit',
  id: 'bike-lights',
  short: 'The bike’s own lights',
  ask: 'Key on: do the bike’s own lights and instruments shine as brightly as ever?',
  phone:
    'Key on: do the instruments and the headlight shine as brightly as ever? Are they weak or flickering, or is the whole bike dark?',
  how: ['Key on, engine off.', 'Look at the instruments, the headlight and the indicators.'],
  why: 'A head unit that is dark on a dark bike is not to blame: the bike has no supply. With bright lights the battery is out of it.',
  tool: 'none',
  minutes: 0.5,
  conditions: ['key-on'],
  sensible: (f) => is(f, 'unit-screen', 'dark', 'restarts'),
  observes: ['unit', 'amp-supply'],
  options: {
    bright: 'As brightly as ever',
    weak: 'They are weak or flicker',
    dark: 'The whole bike is dark',
  },
  outcomes: { bright: 'as bright as ever', weak: 'weak', dark: 'the whole bike is dark' },
});
