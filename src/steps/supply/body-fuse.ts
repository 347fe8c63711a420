import { mayBeOff } from '../amplifier/seen-on.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { supplyMayFail } from './may-fail.ts';

export const bodyFuse: ChoiceStep<'whole' | 'blown' | 'none'> = choice({
  place: 'supply',
  id: 'body-fuse',
  short: 'The amplifier’s own fuses',
  ask: 'Does the amplifier have fuses of its own next to its power plug, and are they whole?',
  phone:
    'Key off. Look next to the thick wires on the amplifier: are there small coloured fuses in it? Pull one at a time, look at its strip, push it back: all whole, or one burnt through? Or hasn’t it got any?',
  how: [
    'Look next to its power terminals, and under any cover.',
    'Pull each fuse, look at its strip and its blades, and push it back home.',
    'Got a meter? Fuse out, it must read next to nothing in ohms.',
  ],
  why: 'An open fuse in the amplifier looks exactly like a dead amplifier, and costs a hundredth of one.',
  tool: 'none',
  minutes: 3,
  conditions: ['key-off', 'amp-uncovered'],
  sensible: (f) =>
    supplyMayFail(f) &&
    mayBeOff(f) &&
    !is(f, 'remote-jumper', 'wakes', 'fault') &&
    !is(f, 'amp-terminals', 'plus-open', 'ground-open', 'sags'),
  observes: ['amp-supply', 'amp'],
  cautions: ['fuse'],
  options: { whole: 'All whole', blown: 'One is burnt through', none: 'It hasn’t got any' },
  outcomes: { whole: 'whole', blown: 'burnt through', none: 'none of its own' },
});
