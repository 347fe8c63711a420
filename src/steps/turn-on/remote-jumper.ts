import { mayBeOff } from '../amplifier/seen-on.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';
import { ofTheLead } from '../supply/unfused.ts';

const HOW: readonly string[] = [
  'Is there a turn-on selector, set to sensing? Key off, set it to wire for this.',
  'Main fuse out while you clip a lead with a 1 A fuse to the amplifier’s positive. Fuse back, key on.',
  'Touch its other end to the remote terminal, five seconds. Watch the light. Take it off.',
  'Then put the selector back.',
];

export const remoteJumper: ChoiceStep<'wakes' | 'blinks' | 'dead' | 'fault' | 'no-terminal'> = choice({
  place: 'turn-on',
  id: 'remote-jumper',
  short: 'Jumper from positive to remote',
  ask: 'Link the amplifier’s own positive to its remote terminal through a 1 A fuse for five seconds. Does it wake?',
  phone: (s) =>
    ofTheLead(
      'Turn-on selector on sensing? Set it to wire. Main fuse out, clip a lead with a 1 amp fuse to the amplifier’s positive, fuse back, key on. Touch only the remote terminal with its other end, never ground, five seconds. Light on, on briefly, its fault colour, or off? Or is there no such terminal?',
      s,
    ),
  how: (s) => HOW.map((line) => ofTheLead(line, s)),
  why: 'If it wakes, its supply, its ground and the amplifier itself are good enough to start. The fault is in whatever should wake it.',
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
    blinks: 'It comes on briefly and goes off, or blinks',
    fault: 'It shows its fault light',
    'no-terminal': 'It has no remote terminal',
  },
  outcomes: {
    wakes: 'wakes with the jumper',
    dead: 'stays off',
    blinks: 'on for a moment with the jumper',
    fault: 'fault light with the jumper',
    'no-terminal': 'no remote terminal',
  },
});
