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
    ask: (s) => `Speakers off, music paused: what is the highest DC voltage across any output of ${ampName(s)}?`,
    phone:
      'One probe on each screw of one output, never to metal. Do every output in turn: what is the highest number?',
    how: [
      'One probe on each screw of one output, never to metal. Do every output.',
      'Type the highest one, without its sign.',
    ],
    why: 'A healthy output has next to no DC across it. A damaged one pushes the coil to one side, and the protection steps in.',
    tool: 'meter',
    minutes: 4,
    conditions: ['amp-uncovered', 'amp-outputs-off', 'music-paused', 'meter-on-dc'],
    sensible: (f) =>
      ampMayBeThere(f) && !fuseStaysOut(f) && mayProtectItself(f) && !is(f, 'speakers-unplugged', 'stays'),
    observes: ['amp'],
    probes: { red: 'amp-out-plus', black: 'amp-out-minus' },
    readings: {
      highestV: {
        label: 'Highest of all outputs',
        unit: 'V',
        possible: [0, 60],
        impossible: 'No output on a 12 V bike has more than 60 V. Is the meter on DC volts?',
      },
    },
    bands: () => [
      { label: 'healthy', low: 0, high: OUTPUT_DC_HEALTHY_V, mood: 'good' },
      { label: 'unclear', low: OUTPUT_DC_HEALTHY_V, high: OUTPUT_DC_BAD_V, mood: 'unsure' },
      { label: 'DC on it', low: OUTPUT_DC_BAD_V, high: 4 * OUTPUT_DC_BAD_V, mood: 'bad' },
    ],
    judge: ({ highestV = 0 }) =>
      highestV < OUTPUT_DC_HEALTHY_V ? 'ok' : highestV < OUTPUT_DC_BAD_V ? 'unclear' : 'offset',
    formula: 'DC across an output = 0 V, give or take 50 mV of offset',
    healthy: () =>
      'Healthy is below 50 mV. Above 0.3 V the output is damaged. While it is protecting itself it may show none.',
    outcomes: { ok: 'no DC', offset: 'DC on an output', unclear: 'a little DC' },
  }),
);
