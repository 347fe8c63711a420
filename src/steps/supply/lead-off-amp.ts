import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const leadOffAmp: ChoiceStep<'bright' | 'dark'> = choice({
  place: 'supply',
  id: 'lead-off-amp',
  short: 'The plus lead off the amplifier',
  ask: 'Now take the plus lead off the amplifier and insulate its end: is the lamp still bright?',
  phone:
    'With battery minus off, take the thick plus lead off the amplifier and tape its end. Battery minus on: is the lamp in place of the fuse as bright as with the lead on, or out? Then battery minus off again.',
  how: [
    'Plus lead off the amplifier, its bare end taped.',
    'Battery minus on. Look at the lamp in the fuse’s place.',
    'Battery minus off again before the lead goes back.',
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
