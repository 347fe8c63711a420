import { firstOf } from '../both.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const bassOrAll: ChoiceStep<'bass' | 'all'> = choice({
  place: 'ears',
  id: 'bass-or-all',
  short: 'Bass or all of it',
  ask: 'At the first step that distorts: bass notes only, or voices too?',
  phone:
    'At the first volume number that distorts, play somebody talking, no music: clean or rough? Then a song with bass. Is it the bass only, or voices too?',
  how: ['First speech without music, then a track with bass, at the same volume.', 'A few seconds each, ears covered.'],
  why: 'Only the bass: a boost, a missing high-pass or a cone out of travel. Voices too: something is clipping.',
  tool: 'ears',
  minutes: 1,
  conditions: ['ugly-step'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  both: firstOf('all', 'bass'),
  options: { bass: 'Bass only, voices are clean', all: 'Voices too' },
  outcomes: { bass: 'bass only', all: 'voices too' },
});
