import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const noiseWhere: ChoiceStep<'phone' | 'plug' | 'stays'> = choice({
  place: 'ears',
  id: 'noise-where',
  short: 'What makes the noise stop',
  ask: 'Idling outdoors, music paused: does the noise stop with the charging lead off the phone, or with the signal plug off the amplifier?',
  phone:
    'Outside, idling, music paused. Take the charging lead off the phone: is the noise gone? If not: key off, thin signal plug off the amplifier, engine on again: gone now, or still there?',
  how: [
    'Music paused, idling outdoors. Charging lead off the phone: listen.',
    'Still there? Key off, signal plug off the amplifier. Key on, engine on, listen at the same speaker.',
    'Key off, plug home until it locks.',
  ],
  why: 'If it stops with a lead off, it comes in through that lead. Still there with both off: it comes in through the amplifier’s supply or ground.',
  tool: 'ears',
  compares: true,
  minutes: 5,
  conditions: ['music-paused', 'engine-running'],
  sensible: (f) => is(f, 'engine-compare', 'noise'),
  observes: ['unit-leads', 'amp-supply'],
  cautions: ['key-off', 'bridge'],
  options: {
    phone: 'Gone with the charging lead off',
    plug: 'Gone with the signal plug off',
    stays: 'Still there with both off',
  },
  outcomes: {
    phone: 'gone without the charging lead',
    plug: 'gone without the signal plug',
    stays: 'stays without both',
  },
  ifCannot: 'No cable, or the plug is out of reach: skip it.',
});
