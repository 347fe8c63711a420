import { AC_DIGITS } from '../../compute/meter.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { rearAmpMayBeThere } from '../fitted/amp-there.ts';
import { fedFromRear } from '../fitted/fed-from.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation, type Values } from '../step.ts';
import { acReading, leastReferenceV, nothingBelowV, tooLittle } from '../tools/ac-volts.ts';
import { HIDDEN_RATIO, unitResidueV } from '../tools/residue.ts';
import { smallestDigitV } from '../tools/smallest-digit.ts';
import { onLineLevel } from './line-level.ts';

/** A signal loses next to nothing between two ends of a sound lead. Common practice, no published source. */
const ARRIVES_LOW_RATIO = 0.85;

const ARRIVES_HIGH_RATIO = 1.15;

/** Left and right of a line-level lead, whose own level nobody knows. Common practice, no published source. */
const SIDES_DIFFER_RATIO = 0.1;

/** Nothing, or what the head unit leaves on its wires with the tone off, where that was read. */
const nothingAtInputV = (sentV: number, situation: Situation): number =>
  Math.max(nothingBelowV(sentV, situation), HIDDEN_RATIO * unitResidueV(situation.facts));

/** What arrives when nothing is lost: 15 % to either side, and the last three digits that the meter may be off. */
function arrivingV(sentV: number, situation: Situation) {
  const offV = AC_DIGITS * smallestDigitV(situation.facts);
  const leastV = nothingAtInputV(sentV, situation);
  return {
    lowV: Math.max(leastV, ARRIVES_LOW_RATIO * sentV - offV),
    highV: Math.max(leastV, ARRIVES_HIGH_RATIO * sentV + offV),
  };
}

function inputBands(sentV: number, situation: Situation): readonly Band[] {
  const nothingV = nothingAtInputV(sentV, situation);
  const nothing = { label: 'nothing', low: 0, high: nothingV, mood: 'bad' } as const;
  if (onLineLevel(situation))
    return [nothing, { label: 'a signal arrives', low: nothingV, high: Math.max(4 * sentV, 6), mood: 'good' }];
  const { lowV, highV } = arrivingV(sentV, situation);
  return [
    nothing,
    { label: 'lost on the way', low: nothingV, high: lowV, mood: 'unsure' },
    { label: 'healthy', low: lowV, high: highV, mood: 'good' },
    { label: 'more than was sent', low: highV, high: 2 * highV, mood: 'unsure' },
  ];
}

/** More than was sent cannot arrive over plain wires: the volume was touched, or a pair was mixed up. */
function moreThanSent(values: Values, situation: Situation) {
  if (onLineLevel(situation) || values['sentV'] === undefined) return null;
  const most = arrivingV(values['sentV'], situation).highV;
  const reading = ['leftV', 'rightV'].find((name) => (values[name] ?? 0) > most);
  return reading === undefined
    ? null
    : {
        reading,
        message:
          'Speaker wires cannot deliver more than was sent. Leave the volume alone and take all three readings again. Is there a converter in between? Then change “Signal into the amplifier” to a line-level lead.',
      };
}

/** What reaches the rear inputs of the amplifier, against what leaves the head unit at the same volume step. */
export const ampIn: ReadingStep<'ok' | 'low' | 'none'> = measurement({
  place: 'amplifier',
  id: 'amp-in',
  short: 'Rear inputs of the amplifier',
  ask: 'Does the signal for the rear arrive at the amplifier’s inputs?',
  phone:
    'Leave the volume alone throughout. First the pair that feeds it, at the radio’s plug, one probe on each wire, never to metal: what number? Then both thin pairs where they go into the amplifier: what two numbers?',
  how: (s) => [
    `Turn up until the reference reads ${formatQuantity(leastReferenceV(s) * 1.2, 'V', 2)} or more. Leave the volume there.`,
    `Reference: one ${fedFromRear(s) ? 'rear' : 'front'} pair as it leaves the head unit.`,
    fedFromRear(s)
      ? 'Then the rear left and rear right inputs at the amplifier, plug fitted.'
      : 'Then the left and right inputs that are plugged in, at the amplifier. The rear takes its signal from them.',
  ],
  why: 'A signal that leaves the head unit but does not arrive is lost in a plug, a lead or an adapter in between.',
  tool: 'meter',
  minutes: 8,
  conditions: ['amp-uncovered', 'amp-outputs-off', 'panel-off', 'tone-400', 'meter-on-ac'],
  sensible: rearAmpMayBeThere,
  observes: ['settings', 'profile', 'unit', 'unit-leads'],
  tones: ['400hz'],
  probes: { red: 'amp-in-plus', black: 'amp-in-minus' },
  readings: {
    sentV: {
      ...acReading('The pair that feeds it, at the head unit'),
      probes: (s) =>
        fedFromRear(s)
          ? { red: 'unit-rear-plus', black: 'unit-rear-minus' }
          : { red: 'unit-front-plus', black: 'unit-front-minus' },
    },
    leftV: acReading('Left input'),
    rightV: acReading('Right input'),
  },
  unusable: (values, s) => tooLittle('sentV', values['sentV'], s) ?? moreThanSent(values, s),
  bands: (reading, values, s) =>
    reading === 'sentV' || values['sentV'] === undefined || tooLittle('sentV', values['sentV'], s)
      ? null
      : inputBands(values['sentV'], s),
  judge: (values, s) => {
    const bands = inputBands(values['sentV'] ?? 0, s);
    const [leftV, rightV] = [values['leftV'] ?? 0, values['rightV'] ?? 0];
    const labels = [leftV, rightV].map((valueV) => bandOf(bands, valueV)?.label);
    if (labels.every((label) => label === 'nothing')) return 'none';
    if (onLineLevel(s)) {
      const alikeV = SIDES_DIFFER_RATIO * Math.max(leftV, rightV) + AC_DIGITS * smallestDigitV(s.facts);
      return labels.includes('nothing') || Math.abs(leftV - rightV) > alikeV ? 'low' : 'ok';
    }
    return labels.every((label) => label === 'healthy') ? 'ok' : 'low';
  },
  formula: 'at the amplifier ÷ at the head unit = 0.85 to 1.15',
  healthy: (values, s) => {
    if (onLineLevel(s))
      return 'A converter sets its own level. All that counts is a signal on both sides, left and right within 10 %.';
    if (values['sentV'] === undefined) return 'Healthy is within 15 % of what leaves the head unit.';
    const { lowV, highV } = arrivingV(values['sentV'], s);
    return `Healthy is ${formatRange(lowV, highV, 'V')}: what was sent, give or take 15 % and three of the meter’s last digits.`;
  },
  outcomes: { ok: 'all of it arrives', low: 'part is lost on the way', none: 'nothing arrives' },
  article: 'measure-a-speaker-pair',
  givenUnder: ['meter-digit', 'rear-drive', 'rear-amp-input'],
  ifCannot: 'Key off, push the signal plug home, and carry on.',
});
