import { CHARGING_MOST_V, KEY_ON_HEALTHY_V } from '../../compute/amp-supply.ts';
import { formatRange } from '../../compute/quantity.ts';
import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { ampName } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { type Band, labelIn, measurement, type ReadingStep, type Values } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { dcReading } from '../tools/dc-volts.ts';
import { BATTERY, BATTERY_BANDS } from './battery.ts';
import { fuseStaysOut, supplyMayFail } from './may-fail.ts';
import { DRIFT_V, NEAR_V, plusBands } from './terminal-bands.ts';

function groundBands(supplyV: number): readonly Band[] {
  return [
    { label: 'healthy', low: -0.5, high: NEAR_V, mood: 'good' },
    { label: 'lifted', low: NEAR_V, high: supplyV / 2, mood: 'unsure' },
    { label: 'open', low: supplyV / 2, high: supplyV + DRIFT_V, mood: 'bad' },
  ];
}

const aboveTheBattery = (readings: readonly string[]) => (values: Values) => {
  const supplyV = values['batteryV'] ?? Infinity;
  const reading = readings.find((name) => (values[name] ?? 0) > supplyV + DRIFT_V);
  return reading === undefined
    ? null
    : {
        reading,
        message: 'No terminal can read above the battery. Take all readings again, one right after the other.',
      };
};

/** Positive and ground at the amplifier, against the one reference that cannot be at fault. */
export const ampTerminals: OfEach<
  ReadingStep<'ok' | 'unclear' | 'sags' | 'plus-open' | 'ground-open' | 'battery-low' | 'battery-high'>,
  'meant',
  AmpPair
> = ofEachAmp(
  measurement({
    place: 'supply',
    id: 'amp-terminals',
    short: (s) => `Positive and ground at ${ampName(s)}`,
    ask: (s) =>
      `At ${ampName(s)}: what do battery positive, its positive and its ground read against battery negative?`,
    phone: (s) =>
      `Red on battery positive, never touching the frame with it: what number? On the thick positive of ${ampName(s)}, touching no other metal: what number? On its ground: what number?`,
    how: [
      'Black stays there for all three. Post too far away? Use a long test lead.',
      'Red probe: battery positive post, then the amplifier’s positive terminal, then its ground terminal.',
    ],
    why: 'Measured against its own ground, a good positive looks dead when the ground is at fault. The battery negative post never lies.',
    tool: 'meter',
    minutes: 3,
    conditions: ['amp-uncovered', 'head-unit-playing', 'black-on-minus', 'meter-on-dc'],
    sensible: (f) => supplyMayFail(f) && !fuseStaysOut(f),
    observes: ['amp-supply'],
    probes: { red: 'amp-plus', black: 'battery-minus' },
    readings: {
      batteryV: BATTERY,
      plusV: dcReading('Amplifier positive'),
      groundV: { ...dcReading('Amplifier ground'), probes: { red: 'amp-ground', black: 'battery-minus' } },
    },
    unusable: aboveTheBattery(['plusV', 'groundV']),
    bands: (reading, { batteryV: supplyV }) => {
      if (reading === 'batteryV') return BATTERY_BANDS;
      if (supplyV === undefined) return null;
      return reading === 'plusV' ? plusBands(supplyV) : groundBands(supplyV);
    },
    judge: (values) => {
      const supplyV = values['batteryV'] ?? KEY_ON_HEALTHY_V;
      const plus = labelIn(plusBands(supplyV), values['plusV'] ?? 0);
      const ground = labelIn(groundBands(supplyV), values['groundV'] ?? 0);
      const battery = labelIn(BATTERY_BANDS, supplyV);
      // What is open is open on an empty battery, too, and hours of testing empty one.
      if (plus === 'no supply') return 'plus-open';
      if (ground === 'open') return 'ground-open';
      if (plus === 'sags') return 'sags';
      if (battery === 'nearly empty') return 'battery-low';
      if (battery === 'too high') return 'battery-high';
      return plus === 'healthy' && ground === 'healthy' ? 'ok' : 'unclear';
    },
    formula:
      'positive = battery − I · R of the positive path; ground = I · R of the ground path; with no load I is next to nothing',
    healthy: ({ batteryV: supplyV }) =>
      supplyV === undefined
        ? `Healthy: battery ${formatRange(KEY_ON_HEALTHY_V, CHARGING_MOST_V, 'V')}, positive within ${NEAR_V} V of it, ground below ${NEAR_V} V.`
        : `Healthy: positive ${formatRange(supplyV - NEAR_V, supplyV + DRIFT_V, 'V')}, ground below ${NEAR_V} V. With no load even a bad contact looks good.`,
    outcomes: {
      ok: 'both there',
      unclear: 'volts lost',
      sags: 'most of the volts lost',
      'plus-open': 'no supply',
      'ground-open': 'ground open',
      'battery-low': 'battery nearly empty',
      'battery-high': 'battery voltage too high',
    },
    article: 'voltage-drop-under-load',
    ifCannot: 'Without it we carry on with the fuse and a jumper lead.',
  }),
);
