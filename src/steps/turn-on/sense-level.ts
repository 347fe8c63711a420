import { SENSE_HIGHEST_V, SENSE_LOWEST_V } from '../../compute/amp-supply.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { switchedBy } from '../fitted/switched-by.ts';
import { type Band, labelIn, measurement, type ReadingStep, type Situation, type Values } from '../step.ts';
import { supplyMayFail } from '../supply/may-fail.ts';
import { acReading, UNIT_AC_POSSIBLE_V } from '../tools/ac-volts.ts';
import { HIDDEN_RATIO, unitResidueV } from '../tools/residue.ts';
import { smallestDigitV } from '../tools/smallest-digit.ts';

/** Below this an AC reading at an input is nothing: half as much again as residue or the last digit, never under 10 mV. */
const nothingV = ({ facts }: Situation) =>
  Math.max(0.01, HIDDEN_RATIO * smallestDigitV(facts), HIDDEN_RATIO * unitResidueV(facts));

function levelBands(values: Values, situation: Situation): readonly Band[] {
  const leastV = nothingV(situation);
  const { papersV } = values;
  const lowV = Math.max(leastV, papersV ?? SENSE_LOWEST_V);
  const enoughV = Math.max(lowV, papersV ?? SENSE_HIGHEST_V);
  return [
    { label: 'nothing', low: 0, high: leastV, mood: 'bad' },
    { label: 'too little', low: leastV, high: lowV, mood: 'bad' },
    { label: 'depends on the amplifier', low: lowV, high: enoughV, mood: 'unsure' },
    { label: 'enough', low: enoughV, high: UNIT_AC_POSSIBLE_V[1], mood: 'good' },
  ];
}

/** What an amplifier that waits for sound gets to hear: at the rider's level, and well above it. */
export const senseLevel: ReadingStep<'ok' | 'low' | 'none' | 'unclear'> = measurement({
  place: 'turn-on',
  id: 'sense-level',
  short: 'Sound at its inputs',
  ask: '400 Hz tone: what AC voltage is across one input pair at your usual volume, and three quarters up?',
  phone:
    'One probe on each wire of one input pair at the amplifier, never to metal: what number at your usual volume? And three quarters of the way up? Do its papers say at how many volts it wakes?',
  how: [
    'One probe on each wire of an input pair at the amplifier, plug fitted.',
    'Read at the volume you usually ride with, then at about three quarters of the scale.',
    'Do its papers give the level it wakes at? Type that too.',
  ],
  why: 'Sound below the threshold leaves it asleep. No sound at all is another fault.',
  tool: 'meter',
  minutes: 6,
  conditions: ['amp-uncovered', 'amp-outputs-off', 'tone-400', 'meter-on-ac'],
  sensible: (f) => supplyMayFail(f) && (switchedBy(f) ?? 'signal') === 'signal',
  observes: ['settings', 'profile', 'unit', 'unit-leads'],
  tones: ['400hz'],
  probes: { red: 'amp-in-plus', black: 'amp-in-minus' },
  readings: {
    usualV: acReading('At your usual volume'),
    loudV: acReading('Three quarters up'),
    papersV: {
      ...acReading('Threshold in its papers', true),
      probes: 'not drawn',
      possible: [0.01, 5],
      impossible: 'Thresholds lie between 0.01 and 5 V. Leave it empty if you are not sure.',
    },
  },
  unusable: (values) =>
    (values['usualV'] ?? 0) > (values['loudV'] ?? Infinity)
      ? { reading: 'loudV', message: 'Three quarters up must read more than your usual volume. Take both again.' }
      : null,
  bands: (reading, values, s) => (reading === 'usualV' ? levelBands(values, s) : null),
  judge: (values, s) => {
    if ((values['loudV'] ?? 0) < nothingV(s)) return 'none';
    const label = labelIn(levelBands(values, s), values['usualV'] ?? 0);
    return label === 'enough' ? 'ok' : label === 'depends on the amplifier' ? 'unclear' : 'low';
  },
  formula: 'it wakes when the AC at its inputs is above its threshold',
  healthy: ({ papersV }) =>
    papersV === undefined
      ? `Amplifiers wake above ${formatRange(SENSE_LOWEST_V, SENSE_HIGHEST_V, 'V')}: above ${SENSE_HIGHEST_V} V wakes any of them.`
      : `Healthy is above ${formatQuantity(papersV, 'V', 2)}, as its papers say.`,
  outcomes: {
    ok: 'enough to wake it',
    low: 'too little',
    none: 'nothing arrives',
    unclear: 'depends on the amplifier',
  },
  article: 'amplifiers-that-listen',
  givenUnder: ['meter-digit'],
});
