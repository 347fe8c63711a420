import { type Axis, traced } from '../calculators/picture.ts';
import { gainFromVoltageRatioDb, voltageRatio } from '../compute/decibel.ts';
import type { Figure } from './figure.ts';

const APART: Axis = { label: 'One quieter by, dB', low: 0.2, high: 12 };
const summed = (sign: 1 | -1) => (apartDb: number) =>
  gainFromVoltageRatioDb({ voltageRatio: 1 + sign * voltageRatio({ gainDb: -apartDb }) });

export const polaritySum: Figure = {
  plot: {
    kind: 'plot',
    x: APART,
    y: { label: 'dB against one alone', low: -30, high: 10 },
    curves: [
      { name: 'both push', points: traced(APART, summed(1)) },
      { name: 'one reversed', dashed: true, points: traced(APART, summed(-1)) },
    ],
    limits: [{ name: 'one alone', y: 0 }],
  },
  says: 'Two speakers that push together give up to 6 dB more than one. With one reversed, deep tones all but vanish where both are equally loud.',
};
