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
    'Look at the lamp in the place of the fuse, and hold it by its leads: bright and not going out, dim or flickering, or dark after a short glow?',
  how: [
    'A short glow is healthy: the amplifier fills its capacitors. Bright for longer is a short.',
    'Bright? Move the lead along its way: where it flickers is the place.',
  ],
  why: 'A lamp in the fuse’s place shows a short without a spark and without a second fuse.',
  tool: 'test-lamp',
  minutes: 5,
  conditions: ['amp-uncovered', 'remote-off', 'amp-outputs-off', 'lamp-for-fuse'],
  sensible: (f) => fuseIsOpen(f) || is(f, 'spare-fuse', 'opens'),
  observes: ['amp-supply', 'amp'],
  options: {
    dark: 'Dark, perhaps after a short glow',
    dim: 'It stays dim, or flickers',
    bright: 'Bright, and it stays bright',
  },
  outcomes: { dark: 'dark: no short now', dim: 'dim: something draws', bright: 'bright: a short is there' },
  ifCannot: 'No lamp: one new fuse of the same rating, once, with everything unplugged.',
});
