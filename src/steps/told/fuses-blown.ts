import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const fusesBlown: ChoiceStep<'none' | 'at-once' | 'switch-on' | 'loud' | 'some' | 'unknown'> = choice({
  place: 'told',
  id: 'fuses-blown',
  short: 'Blown fuses',
  ask: 'Has an amplifier fuse ever blown, and when?',
  phone:
    'Did a fuse of that amplifier ever blow? As soon as it was put in, at switch-on, when loud, or nobody knows when? Or did nobody look?',
  how: [
    'The main fuse near the battery, and small ones in the amplifier itself.',
    'Just say what happened. Don’t fit a new fuse to find out.',
  ],
  why: 'At once: the lead touches the frame. At switch-on: the amplifier is shorted. When loud: more current than the fuse is rated for.',
  tool: 'none',
  minutes: 0.4,
  sensible: ampMayBeThere,
  observes: ['amp-supply', 'amp'],
  options: {
    none: 'None that I know of',
    'at-once': 'One, as soon as it was put in',
    'switch-on': 'One, when it was switched on',
    loud: 'One, when it was loud',
    some: 'One or more, nobody knows when',
    unknown: 'Nobody looked',
  },
  outcomes: {
    none: 'none known',
    'at-once': 'as soon as it was put in',
    'switch-on': 'at switch-on',
    loud: 'when loud',
    some: 'blown, nobody knows when',
    unknown: 'nobody looked',
  },
});
