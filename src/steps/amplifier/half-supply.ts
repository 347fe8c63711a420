import { HALF_SUPPLY_PAIR_DIFFERENCE_V, halfSupplyBandV } from '../../compute/half-supply.ts';
import { formatRange } from '../../compute/quantity.ts';
import { rearAmpMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { type Band, bandOf, measurement, type ReadingStep } from '../step.ts';

const wireReading = (label: string) => ({
  label,
  unit: 'V' as const,
  possible: [-0.5, 18] as const,
  impossible: 'No wire on a 12 V bike carries that against battery negative. Is the meter on DC volts?',
});

function halfBands(batteryV: number): readonly Band[] {
  const { lowV, highV } = halfSupplyBandV({ supplyV: batteryV });
  return [
    { label: 'no DC', low: -0.5, high: 0.25 * batteryV, mood: 'bad' },
    { label: 'unclear', low: 0.25 * batteryV, high: lowV, mood: 'unsure' },
    { label: 'half the supply', low: lowV, high: highV, mood: 'good' },
    { label: 'too high', low: highV, high: 1.1 * batteryV, mood: 'bad' },
  ];
}

/** Half the supply as DC on each wire shows that a wire reaches a live bridge output. It proves nothing about a channel. */
export const halfSupply: ReadingStep<'half' | 'zero' | 'one-odd' | 'unclear'> = measurement({
  place: 'amplifier',
  id: 'half-supply',
  short: 'DC on the rear input wires',
  ask: 'Music paused: what DC voltage is on each rear input wire, against battery negative?',
  phone:
    'Red on battery positive, never touching the frame with it: what number? Then red on each of the two thin wires of one rear input, touching nothing else: what two numbers?',
  how: [
    'Red on battery positive: note it.',
    'Red on both wires of one rear input pair at the amplifier, on the side toward the head unit.',
  ],
  why: 'A wire that reaches a live output sits at about half the supply. No DC here but AC at the head unit means that this wire does not come from there.',
  tool: 'meter',
  minutes: 6,
  conditions: ['amp-uncovered', 'music-paused', 'black-on-minus', 'meter-on-dc'],
  sensible: (f) => rearAmpMayBeThere(f) && !is(f, 'rear-amp-input', 'line'),
  observes: ['unit', 'unit-leads'],
  probes: { red: 'amp-in-plus', black: 'battery-minus' },
  readings: {
    batteryV: {
      label: 'Battery positive',
      unit: 'V',
      probes: { red: 'battery-plus', black: 'battery-minus' },
      possible: [8, 16],
      impossible:
        'A 12 V battery that runs the head unit reads 8 to 16 V. Is the meter on DC volts, black on the negative post?',
    },
    plusV: wireReading('One wire of the pair'),
    minusV: { ...wireReading('The other wire'), probes: { red: 'amp-in-minus', black: 'battery-minus' } },
  },
  bands: (reading, values) =>
    reading === 'batteryV' || values['batteryV'] === undefined ? null : halfBands(values['batteryV']),
  judge: (values) => {
    const bands = halfBands(values['batteryV'] ?? 12);
    const [plusV = 0, minusV = 0] = [values['plusV'], values['minusV']];
    // The scale ends above the battery; what reads higher still is too high as well.
    const labels = [plusV, minusV].map((valueV) => bandOf(bands, valueV)?.label ?? 'too high');
    if (labels.every((label) => label === 'no DC')) return 'zero';
    const alike = Math.abs(plusV - minusV) <= HALF_SUPPLY_PAIR_DIFFERENCE_V;
    if (!alike || labels.includes('too high')) return 'one-odd';
    return labels.every((label) => label === 'half the supply') ? 'half' : 'unclear';
  },
  formula: 'each wire = about half the battery, both wires alike',
  healthy: (values) => {
    if (values['batteryV'] === undefined)
      return 'Healthy is 0.40 to 0.55 of the battery reading, both wires within 0.5 V.';
    const { lowV, highV } = halfSupplyBandV({ supplyV: values['batteryV'] });
    return `Healthy is ${formatRange(lowV, highV, 'V')} on each wire, both within ${HALF_SUPPLY_PAIR_DIFFERENCE_V} V.`;
  },
  outcomes: { half: 'half the supply', zero: 'no DC at all', 'one-odd': 'one wire is off', unclear: 'unclear' },
  article: 'half-the-supply-on-a-speaker-wire',
  givenUnder: ['rear-drive'],
});
