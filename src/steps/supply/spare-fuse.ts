import { goesOffAtTimes } from '../amplifier/seen-on.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseIsOpen, fuseMayBeOpen } from './may-fail.ts';

export const spareFuse: ChoiceStep<'wakes' | 'holds' | 'fault' | 'opens'> = choice({
  place: 'supply',
  id: 'spare-fuse',
  short: 'One new fuse of the same rating',
  ask: 'One new fuse of the same rating, speakers and remote wire off at first: what happens?',
  phone:
    'Key off. Fit one new fuse with the same number on it, never a bigger one. Does it hold? If it blows, stop. If it holds: key off, thin remote wire back, key on: amplifier’s light on, fault colour, or off?',
  how: [
    'One new fuse of the same rating. Never a bigger one.',
    'If it holds: key off, remote wire back, key on: what does the light do? Then the speakers, key off for each.',
    'If it blows: stop here. A second one would tell you nothing new.',
  ],
  why: 'A fuse can look whole and be open. One of the same rating is a test; a bigger one is a fire.',
  tool: 'spare-fuse',
  minutes: 4,
  conditions: ['amp-uncovered', 'remote-off', 'amp-outputs-off', 'fuse-out'],
  sensible: (f) =>
    (fuseIsOpen(f) && is(f, 'fuse-lamp', 'dark', 'dim', 'cannot')) ||
    // What comes and goes is no open fuse: that it comes on with a new one would tell nothing.
    (is(f, 'fuse-look', 'whole', 'holder') &&
      !is(f, 'fuse-ohms', 'through') &&
      !goesOffAtTimes(f) &&
      fuseMayBeOpen(f) &&
      !fuseIsOpen(f)),
  observes: ['amp-supply', 'amp'],
  cautions: ['key-off'],
  neverAgain: ['opens'],
  options: {
    wakes: 'It holds, and the amplifier comes on',
    holds: 'It holds, but the amplifier stays off',
    fault: 'It holds, and the fault light comes on',
    opens: 'It blows, at once or at switch-on',
  },
  outcomes: {
    wakes: 'comes on with a new fuse',
    holds: 'new fuse holds, still off',
    fault: 'new fuse holds, fault light',
    opens: 'new fuse blows too',
  },
});
