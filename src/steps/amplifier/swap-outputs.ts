import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const swapOutputs: ChoiceStep<'plays' | 'silent'> = choice({
  place: 'amplifier',
  id: 'swap-outputs',
  short: 'Front output onto the rear speakers',
  ask: 'Put the amplifier’s front output onto the rear speaker run. Do the rear speakers play now?',
  phone: 'Key off, put the thick rear speaker plug where the front one was, key on, low volume. Does the back play?',
  how: [
    'Key off. Mark the plugs.',
    'Rear speaker run onto the front output.',
    'Key on, low volume, listen. Then put everything back.',
  ],
  why: 'The front output is known to work. If the rear speakers play on it, their run and coils are good.',
  tool: 'ears',
  minutes: 8,
  conditions: ['key-off', 'amp-uncovered', 'amp-outputs-off'],
  sensible: (f) =>
    is(f, 'front-drive', 'same') &&
    !is(f, 'wire-to-frame', 'shorted', 'unclear') &&
    !is(f, 'run-ohms', 'low') &&
    !is(f, 'amp-light', 'off', 'fault'),
  observes: ['run', 'speaker'],
  cautions: ['key-off', 'short-suspected'],
  options: { plays: 'Yes, they play', silent: 'No, still silent' },
  outcomes: { plays: 'rear speakers play', silent: 'still silent' },
  ifCannot: 'The plugs are not alike or out of reach, or the front is not on this amplifier: go on without.',
});
