import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseIsOpen, fuseMayBeOpen } from './may-fail.ts';

export const spareFuse: ChoiceStep<'wakes' | 'holds' | 'fault' | 'opens'> = choice({
  place: 'supply',
  id: 'spare-fuse',
  short: 'One new fuse of the same rating',
  ask: 'One new fuse of the same rating, speakers and remote wire off at first: what happens?',
  phone:
    'Key off. One new fuse with the same number on it, never a bigger one. Does it hold? If it opens, stop. If it holds: key off, the thin remote wire back, key on: lamp on, fault colour, or dark?',
  how: [
    'One new fuse of the same rating. Never a bigger one.',
    'It holds: key off, remote wire back, key on, lamp? Then the speakers, key off for each.',
    'It opens: stop here. A second one would tell you nothing new.',
  ],
  why: 'A fuse can be open and look whole. One swap of the same rating is a test; a bigger one is a fire.',
  tool: 'spare-fuse',
  minutes: 4,
  conditions: ['amp-uncovered', 'remote-off', 'amp-outputs-off', 'fuse-out'],
  sensible: (f) =>
    (fuseIsOpen(f) && is(f, 'fuse-lamp', 'dark', 'dim', 'cannot')) ||
    (is(f, 'fuse-look', 'whole', 'holder') && !is(f, 'fuse-ohms', 'through') && fuseMayBeOpen(f) && !fuseIsOpen(f)),
  observes: ['amp-supply', 'amp'],
  cautions: ['key-off'],
  neverAgain: ['opens'],
  options: {
    wakes: 'It holds, and the amplifier comes on',
    holds: 'It holds, the amplifier stays off',
    fault: 'It holds, and the fault lamp comes on',
    opens: 'It opens, at once or when it is switched on',
  },
  outcomes: {
    wakes: 'comes on with a new fuse',
    holds: 'new fuse holds, still off',
    fault: 'new fuse holds, fault lamp',
    opens: 'new fuse opens, too',
  },
});
