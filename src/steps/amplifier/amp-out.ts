import { voltageRatio } from '../../compute/decibel.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { rearAmpMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation, type Values } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';
import { acReading, tooLittle } from '../tools/ac-volts.ts';
import { HIDDEN_RATIO, hiddenBy } from '../tools/residue.ts';
import { smallestDigitV } from '../tools/smallest-digit.ts';
import { expectedGainRatio, gainInWords } from './expected-gain.ts';
import { LEAST_LINE_GAIN, onLineLevel } from './line-level.ts';

/** A gain this far under the expected one starves the speakers: 9 dB, an eighth of the power. An estimate. */
const LOW_GAIN_RATIO = voltageRatio({ gainDb: -9 });

const NO_GAIN_RATIO = 0.02;

/** The least that a healthy amplifier makes of this input. */
const leastOutputV = (values: Values, situation: Situation) =>
  (onLineLevel(situation) ? LEAST_LINE_GAIN : LOW_GAIN_RATIO * expectedGainRatio(situation, 'full')) *
  (values['inV'] ?? 0);

function outputBands(values: Values, situation: Situation): readonly Band[] {
  const inV = values['inV'] ?? 0;
  const nothingV = Math.max(
    NO_GAIN_RATIO * inV,
    HIDDEN_RATIO * (values['residueV'] ?? 0),
    HIDDEN_RATIO * smallestDigitV(situation.facts),
  );
  const healthyV = Math.max(nothingV, leastOutputV(values, situation));
  return [
    { label: 'nothing', low: 0, high: nothingV, mood: 'bad' },
    { label: 'weak', low: nothingV, high: healthyV, mood: 'unsure' },
    {
      label: 'healthy',
      low: healthyV,
      high: Math.max(4 * healthyV, 4 * expectedGainRatio(situation, 'full') * inV),
      mood: 'good',
    },
  ];
}

const unusableOutput = (values: Values, situation: Situation) =>
  tooLittle('inV', values['inV'], situation) ??
  hiddenBy(values['residueV'], leastOutputV(values, situation), { reading: 'inV', valueV: values['inV'] });

const ampReading = (label: string) => ({
  label,
  unit: 'V' as const,
  possible: [0, 120] as const,
  impossible: 'No amplifier on a 12 V bike gives that. Is the meter on AC volts, and on the right range?',
});

/** What the amplifier makes of its input. Residue of its switching stage is read first, with the tone off. */
export const ampOut: ReadingStep<'ok' | 'low' | 'none'> = measurement({
  place: 'amplifier',
  id: 'amp-out',
  short: 'Rear outputs of the amplifier',
  ask: 'What comes out of the amplifier’s rear outputs?',
  phone:
    'Stop the tone: one pair of thick output screws, what number? Tone on again: one thin input pair, then both rear outputs, screw to screw, never to metal. What numbers?',
  how: [
    'Set the rear channels to full range for this: behind a low-pass a 400 Hz tone looks dead.',
    'Stop the tone and read one rear output. What shows now is switching residue, not sound.',
    'Tone on again at the same volume: one rear input, then the rear left and rear right outputs.',
  ],
  why: 'Good input, bad output: the fault is inside the amplifier or in how its knobs are set.',
  tool: 'meter',
  minutes: 8,
  conditions: ['amp-uncovered', 'amp-outputs-off', 'tone-400', 'meter-on-ac'],
  sensible: (f) => rearAmpMayBeThere(f) && !fuseStaysOut(f) && !is(f, 'amp-light', 'off', 'fault', 'blinks'),
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp'],
  tones: ['400hz'],
  probes: { red: 'amp-out-plus', black: 'amp-out-minus' },
  readings: {
    residueV: ampReading('Rear output, tone off'),
    inV: { ...acReading('Rear input, tone on'), probes: { red: 'amp-in-plus', black: 'amp-in-minus' } },
    leftV: ampReading('Rear left output'),
    rightV: ampReading('Rear right output'),
  },
  unusable: unusableOutput,
  bands: (reading, values, s) =>
    (reading === 'leftV' || reading === 'rightV') && values['inV'] !== undefined && !unusableOutput(values, s)
      ? outputBands(values, s)
      : null,
  judge: (values, s) => {
    const bands = outputBands(values, s);
    const labels = [values['leftV'], values['rightV']].map((valueV) => bandOf(bands, valueV ?? 0)?.label ?? 'healthy');
    if (labels.includes('nothing')) return 'none';
    return labels.includes('weak') ? 'low' : 'ok';
  },
  formula: 'output ÷ input = √(P · R) ÷ the full level of the head unit, and no more than 9 dB below that',
  healthy: (values, s) => {
    const full = onLineLevel(s)
      ? 'On a line-level lead more comes out of the amplifier than goes in, never less.'
      : `This amplifier reaches full power with about ${gainInWords(s)} its input.`;
    const healthy = outputBands(values, s).find(({ label }) => label === 'healthy');
    return values['inV'] === undefined || !healthy
      ? full
      : `${full} Healthy here is above ${formatQuantity(healthy.low, 'V', 2)}.`;
  },
  outcomes: { ok: 'healthy', low: 'too little', none: 'nothing comes out' },
  givenUnder: ['meter-digit', 'rear-drive', 'rear-amp-input'],
  ifCannot: 'Without it we swap a front and a rear output and listen.',
});
