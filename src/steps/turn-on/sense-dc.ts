import { SENSE_DC_HIGHEST_V, SENSE_DC_LOWEST_V } from '../../compute/amp-supply.ts';
import { HALF_SUPPLY_PAIR_DIFFERENCE_V, halfSupplyBandV } from '../../compute/half-supply.ts';
import { formatRange } from '../../compute/quantity.ts';
import { showsFault } from '../amplifier/seen-on.ts';
import { switchedBy } from '../fitted/switched-by.ts';
import { type Band, labelIn, measurement, type ReadingStep } from '../step.ts';
import { batteryV } from '../supply/amp-feed.ts';
import { supplyMayFail } from '../supply/may-fail.ts';
import { dcReading } from '../tools/dc-volts.ts';

function dcBands(supplyV: number): readonly Band[] {
  const { lowV, highV } = halfSupplyBandV({ supplyV });
  return [
    { label: 'no DC', low: -0.5, high: SENSE_DC_LOWEST_V, mood: 'bad' },
    { label: 'depends on the amplifier', low: SENSE_DC_LOWEST_V, high: lowV, mood: 'unsure' },
    { label: 'half the supply', low: lowV, high: highV, mood: 'good' },
    { label: 'too high', low: highV, high: supplyV + 1, mood: 'bad' },
  ];
}

/** What an amplifier that waits for half the supply gets to see. */
export const senseDc: ReadingStep<'half' | 'zero' | 'one-missing' | 'one-odd' | 'unclear'> = measurement({
  place: 'turn-on',
  id: 'sense-dc',
  short: 'DC on its input wires',
  ask: 'Music paused: what DC voltage is on both wires of one input pair, against battery negative?',
  phone: 'Red on one thin input wire of the amplifier, then on its partner, touching nothing else: what two numbers?',
  how: [
    'Red probe on each wire of one input pair where it enters the amplifier, plug fitted.',
    'If the first pair reads nothing, try the other side.',
  ],
  why: 'Both speaker wires sit at half the supply. An amplifier may wake by it; if one wire is off, it protects itself. After a transformer, a capacitor or a line output there is none.',
  tool: 'meter',
  minutes: 5,
  conditions: ['amp-uncovered', 'music-paused', 'black-on-minus', 'meter-on-dc'],
  // DC that should not be there makes an amplifier protect itself, however it is switched.
  sensible: (f) => (supplyMayFail(f) && (switchedBy(f) ?? 'dc') === 'dc') || showsFault(f),
  observes: ['unit', 'unit-leads'],
  probes: { red: 'amp-in-plus', black: 'battery-minus' },
  readings: {
    plusV: dcReading('One wire of the pair'),
    minusV: { ...dcReading('The other wire'), probes: { red: 'amp-in-minus', black: 'battery-minus' } },
  },
  bands: (_, __, s) => dcBands(batteryV(s)),
  judge: (values, s) => {
    const { plusV = 0, minusV = 0 } = values;
    const labels = [plusV, minusV].map((valueV) => labelIn(dcBands(batteryV(s)), valueV));
    if (labels.every((label) => label === 'no DC')) return 'zero';
    // A wire that is off its pin has nothing on it; one that carries DC which does not belong there has too much.
    if (labels.includes('no DC')) return 'one-missing';
    if (Math.abs(plusV - minusV) > HALF_SUPPLY_PAIR_DIFFERENCE_V || labels.includes('too high')) return 'one-odd';
    return labels.every((label) => label === 'half the supply') ? 'half' : 'unclear';
  },
  formula: 'each wire = about half the battery',
  healthy: (_, s) => {
    const { lowV, highV } = halfSupplyBandV({ supplyV: batteryV(s) });
    return `Healthy is ${formatRange(lowV, highV, 'V')} on each wire. Amplifiers of this kind wake above ${formatRange(SENSE_DC_LOWEST_V, SENSE_DC_HIGHEST_V, 'V')}.`;
  },
  outcomes: {
    half: 'half the supply',
    zero: 'no DC at all',
    'one-missing': 'none on one of the two',
    'one-odd': 'the two differ',
    unclear: 'unclear',
  },
  article: 'half-the-supply-on-a-speaker-wire',
});
