import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const noiseWhere: ChoiceStep<'phone' | 'plug' | 'stays'> = choice({
  place: 'ears',
  id: 'noise-where',
  short: 'What takes the noise away',
  ask: 'Idling outdoors, music paused: does the noise go with the charging lead off the phone, or with the signal plug off the amplifier?',
  phone:
    'Outside, idling, music paused. Charging lead off the phone: is the noise gone? Key off, then the thin signal plug off the amplifier, engine on again: gone now, or still there?',
  how: [
    'Music paused, idling outdoors. Charging lead off the phone: listen.',
    'Still there? Key off, signal plug off the amplifier. Engine on, listen at the same speaker.',
    'Key off, plug home until it locks.',
  ],
  why: 'Gone with a lead: it comes in by that lead. Still there with both off: it comes by the supply or the ground of the amplifier.',
  tool: 'ears',
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
  ifCannot: 'No cable, or the plug is out of reach: go on without.',
});
