import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { chosen } from '../../rig/rig.ts';
import { ampHearsRear } from '../fitted/fed-from.ts';
import { is } from '../outcome.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation, type Values } from '../step.ts';
import { acReading, leastReferenceV, nothingBelowV, tooLittle } from '../tools/ac-volts.ts';
import { HIDDEN_RATIO, hiddenBy } from '../tools/residue.ts';
import { beforeTheTone } from './before-the-tone.ts';

/** Rear over front at centred fader. Common practice, no published source. */
const EQUAL_LOW_RATIO = 0.7;

const EQUAL_HIGH_RATIO = 1.4;

const frontOf = (values: Values) => values['frontV'] ?? 0;

/** What is there with the tone off is no signal: a pair that is switched off may well show it. */
function rearBands(values: Values, situation: Situation): readonly Band[] {
  const frontV = frontOf(values);
  const [lowV, highV] = [EQUAL_LOW_RATIO * frontV, EQUAL_HIGH_RATIO * frontV];
  const nothingV = Math.max(nothingBelowV(frontV, situation), HIDDEN_RATIO * (values['residueV'] ?? 0));
  return [
    { label: 'nothing', low: 0, high: nothingV, mood: 'bad' },
    { label: 'weak', low: nothingV, high: lowV, mood: 'unsure' },
    { label: 'healthy', low: lowV, high: highV, mood: 'good' },
    { label: 'louder than the front', low: highV, high: 2 * highV, mood: 'unsure' },
  ];
}

const unusableRear = (values: Values, situation: Situation) =>
  tooLittle('frontV', values['frontV'], situation) ??
  hiddenBy(values['residueV'], EQUAL_LOW_RATIO * frontOf(values), { reading: 'frontV', valueV: values['frontV'] });

const rearReadings: ReadingStep['readings'] = {
  residueV: acReading('A rear pair, tone off', true),
  frontV: { ...acReading('Front pair'), probes: { red: 'unit-front-plus', black: 'unit-front-minus' } },
  leftV: acReading('Rear left pair'),
  rightV: acReading('Rear right pair'),
};

function judgeRear(values: Values, situation: Situation): 'ok' | 'uneven' | 'none' | 'one-only' {
  const bands = rearBands(values, situation);
  const labels = [values['leftV'], values['rightV']].map((valueV) => bandOf(bands, valueV ?? 0)?.label);
  const silent = labels.filter((label) => label === 'nothing').length;
  if (silent > 0) return silent === 2 ? 'none' : 'one-only';
  return labels.every((label) => label === 'healthy') ? 'ok' : 'uneven';
}

export type RearPairOutcome = 'ok' | 'uneven' | 'none' | 'one-only';

/** The rear pairs of the head unit, judged against the front pair read in the same step, since nobody knows the volume. */
export const rearPair: ReadingStep<RearPairOutcome> = measurement({
  place: 'unit',
  id: 'rear-pair',
  short: 'Rear pairs at the head unit',
  ask: 'What AC voltage is across the rear pairs at the head unit, compared with the front pair?',
  phone:
    'Stop the tone: one rear pair at the radio, wire to wire, never to metal: what number? Tone on again, same volume for all three: front pair, rear left, rear right. What numbers?',
  how: (s) => [
    ...beforeTheTone(s),
    'Stop the tone and read one rear pair. What shows now is residue, not sound.',
    `Tone on again. Turn up until the front pair reads ${formatQuantity(leastReferenceV(s) * 1.2, 'V', 2)} or more. Leave the volume there.`,
    'One probe on each wire of a pair, never from a wire to metal. Front, rear left, rear right.',
    chosen(s.rig, 'rearFedBy') === 'amp'
      ? 'Can’t reach the head unit’s plug? Use the signal wires on the way to the amplifier.'
      : 'Can’t reach the head unit’s plug? Use any rear plug on the way, on the side towards the head unit.',
  ],
  why: 'Only a tone shows whether a channel is switched on. Half the supply as DC can sit on the wires of a channel that is off too.',
  tool: 'meter',
  minutes: 8,
  conditions: ['controls-flat', 'amp-outputs-off', 'rear-off-unit', 'panel-off', 'tone-400', 'meter-on-ac'],
  sensible: (f) => !is(f, 'rear-inputs', 'front') && (f.outcome('which-amp') === undefined || ampHearsRear(f)),
  observes: ['settings', 'profile', 'unit', 'unit-leads'],
  tones: ['400hz'],
  probes: { red: 'unit-rear-plus', black: 'unit-rear-minus' },
  readings: rearReadings,
  unusable: unusableRear,
  bands: (reading, values, s) =>
    (reading === 'leftV' || reading === 'rightV') && values['frontV'] !== undefined && !unusableRear(values, s)
      ? rearBands(values, s)
      : null,
  judge: judgeRear,
  formula: 'rear ÷ front = 0.7 to 1.4 at one volume step',
  healthy: (values) =>
    values['frontV'] === undefined
      ? `Healthy is ${EQUAL_LOW_RATIO} to ${EQUAL_HIGH_RATIO} of what the front pair reads.`
      : `Healthy is ${formatRange(EQUAL_LOW_RATIO * frontOf(values), EQUAL_HIGH_RATIO * frontOf(values), 'V')}: the front reading times ${EQUAL_LOW_RATIO} to ${EQUAL_HIGH_RATIO}.`,
  outcomes: {
    ok: 'level with the front',
    uneven: 'not level with the front',
    none: 'nothing comes out',
    'one-only': 'only one side',
  },
  article: 'measure-a-speaker-pair',
  givenUnder: ['meter-digit'],
  ifCannot: 'We carry on with what can be reached.',
});
