import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { frontMayServeRear } from './front-for-rear.ts';

export const swapOutputs: ChoiceStep<'plays' | 'weak' | 'silent'> = choice({
  place: 'amplifier',
  id: 'swap-outputs',
  short: 'Front output onto the rear speakers',
  ask: 'Put the amplifier’s front output onto the rear speaker run. Do the rear speakers play now?',
  phone:
    'Skip this if a speaker wire may touch the frame. Key off, put the thick rear speaker plug where the front one was. Key on, low volume: does the back play, play weakly, or stay silent? Then key off, and every plug back in its own place.',
  how: [
    'Plug the rear speaker run onto the front output.',
    'Key on, low volume, listen. Then key off, and put everything back.',
  ],
  why: 'The front output is known to work. If the rear speakers play on it, their run and coils are good.',
  tool: 'ears',
  compares: true,
  minutes: 8,
  conditions: ['key-off', 'amp-uncovered', 'amp-outputs-off'],
  sensible: (f) =>
    frontMayServeRear(f) &&
    !is(f, 'wire-to-frame', 'shorted', 'unclear') &&
    !is(f, 'run-ohms', 'low') &&
    !is(f, 'bulb-to-frame', 'to-frame', 'across'),
  observes: ['run', 'speaker'],
  cautions: ['key-off', 'short-suspected'],
  options: { plays: 'Yes, they play', weak: 'They play, but weakly', silent: 'No, still silent' },
  outcomes: { plays: 'rear speakers play', weak: 'play weakly', silent: 'still silent' },
  ifCannot: 'The plugs differ or are out of reach, or the front is not on this amplifier: skip it.',
});
