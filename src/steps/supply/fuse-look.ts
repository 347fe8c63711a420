import { type ChoiceStep, choice } from '../step.ts';
import { fuseMayBeOpen } from './may-fail.ts';

export const fuseLook: ChoiceStep<'blown' | 'whole'> = choice({
  place: 'supply',
  id: 'fuse-look',
  short: 'Main fuse, by eye',
  ask: 'Key off, main fuse pulled: is its strip burnt through?',
  phone: 'Key off. Pull the big fuse near the battery and hold it against the light. Is the little strip whole?',
  how: [
    'Key off. Amplifier volume does not matter now.',
    'Pull the main fuse of the amplifier, close to the battery. Note its number: that is its amperes.',
    'Look at the strip against the light, and at its blades: dull or brown means heat.',
    'A breaker instead of a fuse? Its button stands out, or its lever hangs: it tripped. Leave it so for now.',
  ],
  why: 'A burnt strip settles that the current was too high once. A whole one settles nothing: it can be open at its cap.',
  tool: 'none',
  minutes: 2,
  conditions: ['fuse-out'],
  sensible: fuseMayBeOpen,
  observes: ['amp-supply'],
  cautions: ['key-off', 'hot'],
  options: { blown: 'Burnt through, or the breaker had tripped', whole: 'It looks whole' },
  outcomes: { blown: 'burnt through', whole: 'looks whole' },
  ifCannot: 'Cannot find it? Follow the thick plus lead from the battery, or from the amplifier back.',
});
