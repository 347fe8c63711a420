import { firstOf } from '../both.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { atAmp } from '../fitted/the-amp.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const gainForVolume: ChoiceStep<'clean' | 'harsh' | 'none'> = choice({
  place: 'amplifier',
  id: 'gain-for-volume',
  short: atAmp('Volume down, its gain up'),
  ask: 'Volume down a few steps, amplifier gain up until it is as loud as before: clean now, or just as distorted?',
  phone:
    'Mark where the gain knobs are set. Volume down five steps, then gain up slowly until it is just as loud again, no louder. Clean now, or just as distorted? Or won’t it come up that far?',
  how: [
    'Mark where each gain knob is set, with a pen.',
    'Volume down five steps. Turn the gain up slowly until it is as loud as it was, no louder.',
    'Then gain back to the mark, and only then volume back up.',
  ],
  why: 'Clean now: the head unit was at its limit because the gain was too low. Just as distorted: the amplifier itself has no more to give.',
  tool: 'ears',
  compares: true,
  minutes: 3,
  conditions: ['amp-uncovered', 'ugly-step'],
  sensible: (f) => ampMayBeThere(f) && !is(f, 'gain-lowest', 'none'),
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  both: firstOf('none', 'harsh', 'clean'),
  options: {
    clean: 'As loud, and clean',
    harsh: 'As loud, and just as distorted',
    none: 'No knob, or it won’t come up that far',
  },
  outcomes: { clean: 'clean that way', harsh: 'just as distorted that way', none: 'no such gain' },
  ifCannot: 'Out of reach or sealed: skip it.',
});
