import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { frontMayServeRear } from './front-for-rear.ts';

export const swapInputs: ChoiceStep<'plays' | 'weak' | 'silent'> = choice({
  place: 'amplifier',
  id: 'swap-inputs',
  short: 'Front plugs into the rear inputs',
  ask: 'Put the front signal plugs into the amplifier’s rear inputs. Do the rear speakers play now?',
  phone:
    'Key off, pull the thin rear plugs at the amplifier and put the front ones in their place. Key on, low volume. Does the back play, play weakly, or stay silent? Then key off, and every plug back in its own place.',
  how: [
    'Mark the plugs. Put the front signal plugs into the rear inputs.',
    'Key on, low volume, listen at the rear. Then key off, and put everything back.',
  ],
  why: 'The front signal is known to be good. If the rear plays with it, the fault is before the amplifier.',
  tool: 'ears',
  compares: true,
  minutes: 6,
  conditions: ['key-off', 'amp-uncovered'],
  sensible: (f) => frontMayServeRear(f) && !is(f, 'rear-inputs', 'front'),
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['key-off', 'loud-tone'],
  options: { plays: 'Yes, the rear plays', weak: 'It plays, but weakly', silent: 'No, still silent' },
  outcomes: { plays: 'rear plays', weak: 'rear plays weakly', silent: 'rear still silent' },
  ifCannot: 'The plugs differ or are out of reach, or the front is not on this amplifier: skip it.',
});
