import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseIsOpen } from './may-fail.ts';

/** A lamp lets only its own current through, so it can stand in for the fuse while the short is still there. */
export const fuseLamp: ChoiceStep<'dark' | 'dim' | 'bright'> = choice({
  place: 'supply',
  id: 'fuse-lamp',
  short: 'A lamp in place of the fuse',
  ask: 'A 12 V lamp in place of the fuse, remote wire and speakers off the amplifier: does the lamp stay bright?',
  phone:
    'Look at the lamp in place of the fuse, and hold it by its leads: bright and staying bright, dim or flickering, or out after a brief glow?',
  how: [
    'A brief glow is healthy: the amplifier is charging its capacitors. Bright for longer is a short.',
    'Bright? Move the lead bit by bit: where the lamp flickers is the place.',
  ],
  why: 'A lamp in the fuse’s place shows a short without a spark and without wasting a fuse.',
  tool: 'test-lamp',
  minutes: 5,
  conditions: ['amp-uncovered', 'remote-off', 'amp-outputs-off', 'lamp-for-fuse'],
  sensible: (f) => fuseIsOpen(f) || is(f, 'spare-fuse', 'opens'),
  observes: ['amp-supply', 'amp'],
  options: {
    dark: 'Out, perhaps after a brief glow',
    dim: 'Dim all the time, or flickering',
    bright: 'Bright, and stays bright',
  },
  outcomes: { dark: 'out: no short now', dim: 'dim: something draws current', bright: 'bright: a short is there' },
  ifCannot: 'No lamp: one new fuse of the same rating, once, with everything unplugged.',
});
