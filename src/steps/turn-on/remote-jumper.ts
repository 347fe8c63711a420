import { mayBeOff } from '../amplifier/seen-on.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';

export const remoteJumper: ChoiceStep<'wakes' | 'blinks' | 'dead' | 'fault' | 'no-terminal'> = choice({
  place: 'turn-on',
  id: 'remote-jumper',
  short: 'Jumper from plus to remote',
  ask: 'Join the amplifier’s own plus to its remote terminal through a 1 A fuse for five seconds. Does it wake?',
  phone:
    'A turn-on selector on sensing? Set it to wire. Main fuse out, clip a lead with a 1 amp fuse to the amplifier’s plus, fuse back, key on. Touch only the remote terminal with its other end, never ground, five seconds. Lamp on, on briefly, its fault colour, or dark? Or has it no such terminal?',
  how: [
    'A turn-on selector stands on sensing? Set it to wire for this, key off.',
    'Main fuse out while you clip a lead with a 1 A fuse to the amplifier’s plus. Fuse back, key on.',
    'Its other end on the remote terminal, five seconds. Watch the lamp. Take it off.',
    'Then the selector goes back.',
  ],
  why: 'If it wakes, its supply, its ground and itself are good enough to start. The fault is in what should wake it.',
  tool: 'jumper',
  minutes: 3,
  conditions: ['amp-uncovered', 'line-leads-out', 'remote-off', 'volume-zero'],
  sensible: (f) =>
    ampMayBeThere(f) && !fuseStaysOut(f) && mayBeOff(f) && !is(f, 'amp-terminals', 'plus-open', 'ground-open', 'sags'),
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  clips: ['amp-plus', 'amp-remote'],
  options: {
    wakes: 'Yes, it wakes',
    dead: 'No, it stays off',
    blinks: 'It comes on briefly and goes dark, or blinks',
    fault: 'It shows its fault lamp',
    'no-terminal': 'It has no remote terminal',
  },
  outcomes: {
    wakes: 'wakes by the jumper',
    dead: 'stays off',
    blinks: 'on for a moment by the jumper',
    fault: 'fault lamp by the jumper',
    'no-terminal': 'no remote terminal',
  },
});
