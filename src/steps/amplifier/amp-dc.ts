import { OUTPUT_DC_BAD_V, OUTPUT_DC_HEALTHY_V } from '../../compute/amp-supply.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { ampName, atAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { is } from '../outcome.ts';
import { measurement, type ReadingStep } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';
import { mayProtectItself } from './seen-on.ts';

export const ampDc: OfEach<ReadingStep<'ok' | 'offset' | 'unclear'>, 'meant', AmpPair> = ofEachAmp(
  measurement({
    place: 'amplifier',
    id: 'amp-dc',
    short: atAmp('DC across its outputs'),
    ask: (s) => `Speakers off, music paused: what DC voltage is across each output of ${ampName(s)}, at the most?`,
    phone: 'One probe on each screw of one output, never to metal. Every output in turn: the highest number?',
    how: [
      'One probe on each screw of one output, never to metal. Every output.',
      'Type the highest, without its sign.',
    ],
    why: 'A healthy output has next to no DC across it. A damaged one pushes the coil to one side, and protection steps in.',
    tool: 'meter',
    minutes: 4,
    conditions: ['amp-uncovered', 'amp-outputs-off', 'music-paused', 'meter-on-dc'],
    sensible: (f) =>
      ampMayBeThere(f) && !fuseStaysOut(f) && mayProtectItself(f) && !is(f, 'speakers-unplugged', 'stays'),
    observes: ['amp'],
    probes: { red: 'amp-out-plus', black: 'amp-out-minus' },
    readings: {
      highestV: {
        label: 'Highest of its outputs',
        unit: 'V',
        possible: [0, 60],
        impossible: 'Without its sign, and on DC volts: no output on a 12 V bike has more than 60 V.',
      },
    },
    bands: () => [
      { label: 'healthy', low: 0, high: OUTPUT_DC_HEALTHY_V, mood: 'good' },
      { label: 'unclear', low: OUTPUT_DC_HEALTHY_V, high: OUTPUT_DC_BAD_V, mood: 'unsure' },
      { label: 'DC on it', low: OUTPUT_DC_BAD_V, high: 4 * OUTPUT_DC_BAD_V, mood: 'bad' },
    ],
    judge: ({ highestV = 0 }) =>
      highestV < OUTPUT_DC_HEALTHY_V ? 'ok' : highestV < OUTPUT_DC_BAD_V ? 'unclear' : 'offset',
    formula: 'DC across an output = 0 V, as far as 50 mV of offset',
    healthy: () =>
      'Healthy is below 50 mV. Above 0.3 V the output is damaged. While it protects itself it may show none.',
    outcomes: { ok: 'no DC', offset: 'DC on an output', unclear: 'a little DC' },
  }),
);
