import { type Axis, traced } from '../calculators/picture.ts';
import { clippedSine } from '../compute/clipping.ts';
import { voltageRatio } from '../compute/decibel.ts';
import type { Figure } from './figure.ts';

const OVERDRIVE_DB = 6;
const DEGREES: Axis = { label: 'degrees', low: 0, high: 360 };
const peak = voltageRatio({ gainDb: OVERDRIVE_DB });
const asked = (degrees: number) => peak * Math.sin((degrees * Math.PI) / 180);
const powerOverClean = clippedSine({ overdriveDb: OVERDRIVE_DB }).powerRatio;

export const clipping: Figure = {
  plot: {
    kind: 'plot',
    x: DEGREES,
    y: { label: 'Volts over the limit', low: -2, high: 2 },
    curves: [
      { name: 'what comes out', points: traced(DEGREES, (at) => Math.max(-1, Math.min(1, asked(at))), 96) },
      { name: 'what was asked for', dashed: true, points: traced(DEGREES, asked, 96) },
    ],
  },
  says: `A sine that is asked to go ${OVERDRIVE_DB} dB beyond the limit comes out with its tops cut off, and carries ${powerOverClean.toFixed(1)} times the power of the largest clean one.`,
};
