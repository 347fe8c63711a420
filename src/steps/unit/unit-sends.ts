import { formatQuantity } from '../../compute/quantity.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation, type Values } from '../step.ts';
import { acReading, UNIT_AC_POSSIBLE_V } from '../tools/ac-volts.ts';
import { HIDDEN_RATIO } from '../tools/residue.ts';
import { smallestDigitV } from '../tools/smallest-digit.ts';
import { unitRuns } from './unit-dark.ts';

/** What a meter shows with nothing on its probes may be a few of its last digits. Common practice, no published source. */
const NOISE_DIGITS = 3;

const leastV = (values: Values, situation: Situation): number =>
  Math.max(NOISE_DIGITS * smallestDigitV(situation.facts), HIDDEN_RATIO * (values['residueV'] ?? 0));

function sendsBands(values: Values, situation: Situation): readonly Band[] {
  const nothingV = leastV(values, situation);
  return [
    { label: 'nothing', low: 0, high: nothingV, mood: 'bad' },
    { label: 'a signal', low: nothingV, high: UNIT_AC_POSSIBLE_V[1], mood: 'good' },
  ];
}

/** Whether anything leaves the head unit at all: what is silent lies before it or after it. */
export const unitSends: ReadingStep<'sends' | 'nothing'> = measurement({
  place: 'unit',
  id: 'unit-sends',
  short: 'Front pair at the head unit',
  ask: 'With the tone on, what AC voltage is across the front pair at the head unit’s own plug?',
  phone:
    'Stop the tone: one front pair at the radio’s own plug, wire to wire, never to metal: what number? Tone on again, slowly up to half the volume, no further: what number now? Then the other front pair: the higher of the two counts.',
  how: (s) => [
    'Stop the tone and read either front pair. What shows now is residue, not sound.',
    `Tone on again. Up one step at a time until it reads ${formatQuantity(leastV({}, s), 'V', 1)} or more, to half the volume and no further.`,
    'One probe on each wire of the pair, never from a wire to metal. Then the other side: the higher reading counts.',
    'Can’t reach the plug? Use the signal wires on the way to the amplifier, or a front speaker’s plug.',
  ],
  why: 'A signal there: the sound is lost further on. None there: the head unit is muted, sends it elsewhere, or its outputs are dead.',
  tool: 'meter',
  minutes: 8,
  conditions: ['controls-flat', 'amp-outputs-off', 'panel-off', 'tone-400', 'meter-on-ac'],
  sensible: unitRuns,
  observes: ['settings', 'unit', 'unit-leads'],
  tones: ['400hz'],
  probes: { red: 'unit-front-plus', black: 'unit-front-minus' },
  readings: { residueV: acReading('Front pair, tone off', true), frontV: acReading('Front pair, tone on') },
  bands: (reading, values, s) => (reading === 'frontV' ? sendsBands(values, s) : null),
  judge: (values, s) =>
    bandOf(sendsBands(values, s), values['frontV'] ?? 0)?.label === 'a signal' ? 'sends' : 'nothing',
  formula: 'a signal: above three last digits, and half as much again as with the tone off',
  healthy: (values, s) => `Healthy is ${formatQuantity(leastV(values, s), 'V', 1)} or more at half the volume.`,
  outcomes: { sends: 'the head unit sends a signal', nothing: 'nothing leaves the head unit' },
  article: 'measure-a-speaker-pair',
  givenUnder: ['meter-digit'],
  ifCannot: 'We carry on with what can be reached.',
});
