import { type ChoiceStep, choice } from '../step.ts';
import { fuseIsOpen } from './may-fail.ts';

/** A lamp lets only its own current through, so it can stand in for the fuse while the short is still there. */
export const fuseLamp: ChoiceStep<'dark' | 'bright'> = choice({
  place: 'supply',
  id: 'fuse-lamp',
  short: 'A lamp in place of the fuse',
  ask: 'A 12 V lamp in place of the fuse, remote wire and speakers off the amplifier: does the lamp stay bright?',
  phone:
    'No new fuse yet. Key off, thin remote wire and speakers off the amplifier. Put a bulb where the fuse was. Bright, or dark?',
  how: [
    'Key off. Remote wire and all speaker plugs off the amplifier, the remote wire’s end insulated.',
    'A 12 V lamp of 21 to 55 W on two leads, in place of the fuse.',
    'A short glow is healthy: the amplifier fills its capacitors. Bright for longer is a short.',
    'Bright? Move the lead along its way: where it flickers is the place.',
  ],
  why: 'A lamp in the fuse’s place shows a short without a spark and without a second fuse.',
  tool: 'test-lamp',
  minutes: 5,
  conditions: ['amp-uncovered', 'remote-off', 'amp-outputs-off', 'lamp-for-fuse'],
  sensible: fuseIsOpen,
  observes: ['amp-supply', 'amp'],
  cautions: ['key-off', 'lamp-hot', 'minus-first', 'fuse'],
  options: { dark: 'Dark, perhaps after a short glow', bright: 'Bright, and it stays bright' },
  outcomes: { dark: 'dark: no short now', bright: 'bright: a short is there' },
  ifCannot: 'No lamp: one new fuse of the same rating, once, with everything unplugged.',
});
