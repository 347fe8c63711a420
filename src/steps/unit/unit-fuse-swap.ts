import { is, isKnown } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

/** For whoever has no meter: what looks whole may be open, and another one that works shows it. */
export const unitFuseSwap: ChoiceStep<'starts' | 'no-change'> = choice({
  place: 'unit',
  id: 'unit-fuse-swap',
  short: 'Head unit fuses swapped',
  ask: 'A fuse that works, of the same rating, in place of each head unit fuse in turn: does it start with one of them?',
  phone:
    'Key off. Take a fuse with the same number on it from something in the fuse box that works, the horn for one. Put it in place of each radio fuse in turn, the one in its back as well, then key on: does the radio start? Key off again before the next, and put them all back.',
  how: [
    'The same number on it, never a bigger one. Key off for each.',
    'One place at a time: fuse in, key on, a minute for the screen.',
    'Don’t forget the one in the back of the head unit.',
    'It starts? The one that came out is open, however whole it looks. The borrowed one goes back.',
  ],
  why: 'A fuse can look whole and be open at its cap. One that works elsewhere shows it without a meter.',
  tool: 'spare-fuse',
  minutes: 6,
  conditions: ['key-off', 'panel-off'],
  sensible: (f) =>
    is(f, 'unit-fuses', 'whole') && is(f, 'unit-screen', 'dark', 'restarts') && !isKnown(f, 'unit-fuse-ohms'),
  observes: ['unit'],
  cautions: ['key-off', 'fuse'],
  options: { starts: 'Yes, it starts with one of them', 'no-change': 'No, it stays as it is with all of them' },
  outcomes: { starts: 'starts with another fuse', 'no-change': 'no change with other fuses' },
  givenUnder: ['unit-fuses'],
});
