import {
  CHARGING_HEALTHY_HIGHEST_V,
  CHARGING_HEALTHY_LOWEST_V,
  CHARGING_LEAST_V,
  CHARGING_MOST_V,
  KEY_ON_HEALTHY_V,
} from '../../compute/amp-supply.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { firstOf } from '../both.ts';
import { type Band, labelIn, measurement, type ReadingStep } from '../step.ts';
import { MOST_V } from '../tools/dc-volts.ts';

const POSTS = { red: 'battery-plus', black: 'battery-minus' } as const;
const IMPOSSIBLE = 'No running engine leaves a battery there. Is the meter on DC volts, red on the positive post?';

const IDLE_BANDS: readonly Band[] = [
  { label: 'nothing fills it', low: 0, high: KEY_ON_HEALTHY_V, mood: 'bad' },
  { label: 'enough at idle', low: KEY_ON_HEALTHY_V, high: CHARGING_MOST_V, mood: 'good' },
  { label: 'too high', low: CHARGING_MOST_V, high: MOST_V, mood: 'bad' },
];
const FAST_BANDS: readonly Band[] = [
  { label: 'too low', low: 0, high: CHARGING_LEAST_V, mood: 'bad' },
  { label: 'fills it', low: CHARGING_LEAST_V, high: CHARGING_MOST_V, mood: 'good' },
  { label: 'too high', low: CHARGING_MOST_V, high: MOST_V, mood: 'bad' },
];

/** What the battery gets while the engine runs: one that nothing fills reads as low as a worn one. */
export const chargingVolts: ReadingStep<'fills' | 'low' | 'idle-low' | 'high'> = measurement({
  place: 'supply',
  id: 'charging-volts',
  short: 'Battery with the engine running',
  ask: 'Engine running, lights on: what do the battery posts read, at idle and at about 3000 rpm?',
  phone:
    'Outside only, in neutral, lights on, music off. Red on the battery positive, never touching the frame with it, black on the negative. What number at idle? And with the engine held at about 3000?',
  how: [
    'Lights on, music off, heated gear as it is when it fails. Read at idle.',
    'Then hold it at about 3000 rpm for ten seconds, and read again. Sleeves and leads clear of hot and turning parts.',
  ],
  why: 'With the engine off, a battery that nothing fills looks like a worn one. Running, the two part.',
  tool: 'meter',
  minutes: 4,
  conditions: ['engine-running', 'black-on-minus', 'meter-on-dc'],
  observes: ['amp-supply'],
  probes: POSTS,
  readings: {
    idleV: { label: 'At idle', unit: 'V', possible: [8, MOST_V], impossible: IMPOSSIBLE },
    fastV: { label: 'At 3000 rpm', unit: 'V', possible: [8, MOST_V], impossible: IMPOSSIBLE },
  },
  bands: (reading) => (reading === 'idleV' ? IDLE_BANDS : FAST_BANDS),
  judge: ({ idleV = 0, fastV = 0 }) => {
    const [idle, fast] = [labelIn(IDLE_BANDS, idleV), labelIn(FAST_BANDS, fastV)];
    if (fast === 'too high' || idle === 'too high') return 'high';
    if (fast === 'too low') return 'low';
    return idle === 'nothing fills it' ? 'idle-low' : 'fills';
  },
  formula: 'posts = regulator volts while the stator makes enough; below that the battery pays for the rest',
  healthy: () =>
    `Healthy: ${formatRange(CHARGING_HEALTHY_LOWEST_V, CHARGING_HEALTHY_HIGHEST_V, 'V')} at 3000 rpm. Below ${formatQuantity(CHARGING_LEAST_V, 'V', 3)} nothing fills it.`,
  both: firstOf('high', 'low', 'idle-low', 'fills'),
  outcomes: { fills: 'charges', low: 'charges too little', 'idle-low': 'too little at idle', high: 'charges too high' },
  article: 'the-charging-system',
  ifCannot: 'Not indoors: exhaust gas kills. Look whether the lights brighten from idle to 3000 rpm instead.',
});
