import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { supplyMayFail } from './may-fail.ts';

export const ringsLook: ChoiceStep<'battery' | 'ground' | 'amp' | 'thin' | 'tight'> = choice({
  place: 'supply',
  id: 'rings-look',
  short: 'Its ground lead, end to end',
  ask: 'Follow the amplifier’s ground lead: is a ring loose, painted over or green, or the lead thinner than the positive one?',
  phone:
    'Follow the amplifier’s ground lead to both ends. Is a ring loose, painted underneath or green: at the battery post, at the frame, at the amplifier, or nowhere? And is it as thick as the positive lead?',
  how: [
    'Look at both ends: at the amplifier, and where it is bolted on.',
    'Bolted to a painted, anodised or rubber-mounted part counts as bad.',
    'Compare what is printed on both jackets, or the bare copper: the ground carries all that the positive one does.',
  ],
  why: 'The volts are lost at the battery post, at the frame, in a crimp, or along a lead that is too thin. Each has its own fix.',
  tool: 'none',
  minutes: 3,
  conditions: ['minus-off'],
  sensible: (f) => supplyMayFail(f) && !is(f, 'supply-under-load', 'ok', 'plus-worn'),
  observes: ['amp-supply'],
  options: {
    battery: 'Loose or green at the battery post',
    ground: 'Loose, painted or green where it meets the frame',
    amp: 'Loose or green at the amplifier',
    thin: 'Its ends are good, and it is clearly thinner',
    tight: 'Both ends good, and as thick',
  },
  outcomes: {
    battery: 'bad at the battery post',
    ground: 'bad at the frame',
    amp: 'bad at the amplifier',
    thin: 'thinner than the positive lead',
    tight: 'good, and as thick',
  },
});
