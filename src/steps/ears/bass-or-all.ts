import { type ChoiceStep, choice } from '../step.ts';

export const bassOrAll: ChoiceStep<'bass' | 'all'> = choice({
  place: 'ears',
  id: 'bass-or-all',
  short: 'Bass or all of it',
  ask: 'At the first ugly step: is it ugly on bass notes only, or on voices too?',
  phone:
    'At the first ugly number play somebody talking, no music. Clean or rough? Then a song with bass. Which is ugly?',
  how: ['First speech without music, then a track with bass, at the same step.', 'A few seconds each, ears covered.'],
  why: 'Only the bass: a boost, a missing high-pass or a cone at the end of its way. Voices too: something is cut off at its limit.',
  tool: 'ears',
  minutes: 1,
  conditions: ['ugly-step'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  options: { bass: 'Bass only, voices are clean', all: 'Voices too' },
  outcomes: { bass: 'bass only', all: 'voices too' },
});
