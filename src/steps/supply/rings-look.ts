import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { supplyMayFail } from './may-fail.ts';

export const ringsLook: ChoiceStep<'battery' | 'ground' | 'amp' | 'tight'> = choice({
  place: 'supply',
  id: 'rings-look',
  short: 'Its ground lead’s rings',
  ask: 'Follow the amplifier’s ground lead: is a ring loose, painted over or green?',
  phone:
    'Follow the amplifier’s ground lead to both ends. Is a ring loose, painted underneath or green: at the battery post, at the frame, at the amplifier, or nowhere?',
  how: [
    'Look at both ends: at the amplifier, and where it is bolted on.',
    'Bolted to a painted, anodised or rubber-mounted part counts as bad.',
  ],
  why: 'The break is at the battery post, at the frame, or in a crimp. Each has its own fix.',
  tool: 'none',
  minutes: 3,
  conditions: ['minus-off'],
  sensible: (f) => supplyMayFail(f) && !is(f, 'supply-under-load', 'ok'),
  observes: ['amp-supply'],
  options: {
    battery: 'Loose or green at the battery post',
    ground: 'Loose, painted or green where it meets the frame',
    amp: 'Loose or green at the amplifier',
    tight: 'Both ends look good',
  },
  outcomes: {
    battery: 'bad at the battery post',
    ground: 'bad at the frame',
    amp: 'bad at the amplifier',
    tight: 'both ends look good',
  },
});
