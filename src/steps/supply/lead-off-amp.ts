import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const leadOffAmp: ChoiceStep<'bright' | 'dark'> = choice({
  place: 'supply',
  id: 'lead-off-amp',
  short: 'The positive lead off the amplifier',
  ask: 'Now take the positive lead off the amplifier and insulate its end: is the lamp still bright?',
  phone:
    'With battery negative off, take the thick positive lead off the amplifier and tape its end. Battery negative on: is the lamp in place of the fuse as bright as with the lead on, or out? Then battery negative off again.',
  how: [
    'Positive lead off the amplifier, its bare end taped.',
    'Battery negative on. Look at the lamp in the fuse’s place.',
    'Battery negative off again before the lead goes back.',
  ],
  why: 'Still bright without the amplifier: the lead touches the frame. Out now: the amplifier itself is shorted.',
  tool: 'test-lamp',
  minutes: 5,
  conditions: ['amp-uncovered', 'remote-off', 'amp-outputs-off', 'lamp-for-fuse', 'minus-off'],
  sensible: (f) => is(f, 'fuse-lamp', 'bright', 'dim'),
  observes: ['amp-supply', 'amp'],
  options: { bright: 'Still as bright', dark: 'Out now' },
  outcomes: { bright: 'bright without the amplifier', dark: 'out without the amplifier' },
  givenUnder: ['fuse-lamp'],
});
