import { type Axis, traced } from '../calculators/picture.ts';
import { gainFromVoltageRatioDb } from '../compute/decibel.ts';
import { highpass, magnitudeDb } from '../compute/filter.ts';
import type { Figure } from './figure.ts';

const CORNER_HZ = 100;
const HZ: Axis = { label: 'Hz', low: 20, high: 500, log: true };

/** The sharpness of each stage of a filter that falls flat into its corner (Butterworth, second and fourth order). */
const STAGES_12 = [Math.SQRT1_2];
const STAGES_24 = [0.5412, 1.3066];
const response = (sharpness: readonly number[]) => (frequencyHz: number) =>
  sharpness.reduce((sum, q) => {
    const qDb = gainFromVoltageRatioDb({ voltageRatio: q });
    return sum + magnitudeDb({ coefficients: highpass({ cornerHz: CORNER_HZ, qDb }), frequencyHz });
  }, 0);

export const highPassSlopes: Figure = {
  plot: {
    kind: 'plot',
    x: HZ,
    y: { label: 'dB', low: -48, high: 6 },
    curves: [
      { name: '12 dB an octave', points: traced(HZ, response(STAGES_12)) },
      { name: '24 dB an octave', dashed: true, points: traced(HZ, response(STAGES_24)) },
    ],
    marks: [{ name: 'corner, −3 dB', x: CORNER_HZ, y: response(STAGES_12)(CORNER_HZ) }],
  },
  says: `Two high-pass filters at ${CORNER_HZ} Hz: both have taken 3 dB there. An octave below, one has taken 12 dB and the other 24.`,
};
