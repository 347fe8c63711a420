import { ampMayBeThere } from '../fitted/amp-there.ts';
import { atAmp } from '../fitted/the-amp.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const gainForVolume: ChoiceStep<'clean' | 'harsh' | 'none'> = choice({
  place: 'amplifier',
  id: 'gain-for-volume',
  short: atAmp('Volume down, its gain up'),
  ask: 'Volume some steps lower, the amplifier’s gain up until it is as loud as before: clean now, or just as ugly?',
  phone:
    'Mark where the gain knobs stand. Volume five steps lower, then the gain up slowly until it is just as loud again, and no louder. Clean now, or just as ugly? Does it not come up that far?',
  how: [
    'Mark where each gain knob stands, with a pen.',
    'Volume five steps lower. Turn the gain up slowly, until it is as loud as it was, and no louder.',
    'Then gain back to the mark, and only then the volume up.',
  ],
  why: 'Clean now: the head unit was at its limit because the amplifier was asked for too little. Just as ugly: the amplifier itself has no more.',
  tool: 'ears',
  minutes: 3,
  conditions: ['amp-uncovered', 'ugly-step'],
  sensible: (f) => ampMayBeThere(f) && !is(f, 'gain-lowest', 'none'),
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  options: {
    clean: 'As loud, and clean',
    harsh: 'As loud, and just as ugly',
    none: 'No knob, or it does not come up that far',
  },
  outcomes: { clean: 'clean that way', harsh: 'as ugly that way', none: 'no such gain' },
  ifCannot: 'Out of reach or sealed: go on without.',
});
