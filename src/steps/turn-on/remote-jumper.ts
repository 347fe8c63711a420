import { mayBeOff } from '../amplifier/seen-on.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const remoteJumper: ChoiceStep<'wakes' | 'dead' | 'fault' | 'no-terminal'> = choice({
  place: 'turn-on',
  id: 'remote-jumper',
  short: 'Jumper from plus to remote',
  ask: 'Join the amplifier’s own plus to its remote terminal through a 1 A fuse for five seconds. Does it wake?',
  phone:
    'Pull the thin remote wire off first and tape it. Then the little fused lead, amplifier plus to remote, five seconds. Lamp?',
  how: [
    'Head unit’s volume at zero. Remote wire off its terminal, its end insulated.',
    'A turn-on selector stands on sensing? Set it to wire for this, key off.',
    'Fused lead, 1 A: amplifier plus to remote terminal, five seconds. Watch the lamp. Take it off.',
    'Then the remote wire and the selector go back.',
  ],
  why: 'If it wakes, its supply, its ground and itself are good enough to start. The fault is in what should wake it.',
  tool: 'jumper',
  minutes: 3,
  conditions: ['amp-uncovered', 'line-leads-out', 'remote-off', 'volume-zero'],
  sensible: (f) => ampMayBeThere(f) && mayBeOff(f) && !is(f, 'amp-terminals', 'plus-open', 'ground-open'),
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['jumper', 'wakes-loud', 'ground-open'],
  options: {
    wakes: 'Yes, it wakes',
    dead: 'No, it stays off',
    fault: 'It shows its fault lamp',
    'no-terminal': 'It has no remote terminal',
  },
  outcomes: {
    wakes: 'wakes by the jumper',
    dead: 'stays off',
    fault: 'fault lamp by the jumper',
    'no-terminal': 'no remote terminal',
  },
});
