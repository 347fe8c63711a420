import { FEED_LOSES_AT_MOST_V } from '../../compute/unit-feed.ts';
import { is } from '../outcome.ts';
import { type Band, bandOf, measurement, type ReadingStep } from '../step.ts';

/** Under half of the battery nothing arrives that could start anything. */
const MISSING_RATIO = 0.5;

function feedBands(batteryV: number): readonly Band[] {
  return [
    { label: 'missing', low: -0.5, high: MISSING_RATIO * batteryV, mood: 'bad' },
    { label: 'low', low: MISSING_RATIO * batteryV, high: batteryV - FEED_LOSES_AT_MOST_V, mood: 'unsure' },
    { label: 'healthy', low: batteryV - FEED_LOSES_AT_MOST_V, high: batteryV + FEED_LOSES_AT_MOST_V, mood: 'good' },
  ];
}

/** Below this nothing on a 12 V bike runs: it is flat, or has switched itself off. Common practice, no published source. */
const NO_BATTERY_V = 6;

const feed = (label: string) => ({
  label,
  unit: 'V' as const,
  probes: 'not drawn' as const,
  possible: [-0.5, 18] as const,
  impossible: 'No feed on a 12 V bike carries that. Is the meter on DC volts, black on the negative post?',
});

/** More than this on its ground wire is no ground. Common practice, no published source. */
export const GROUND_AT_MOST_V = 0.1;
const GROUND_LOST_V = 0.5;
const GROUND_BANDS: readonly Band[] = [
  { label: 'healthy', low: -0.5, high: GROUND_AT_MOST_V, mood: 'good' },
  { label: 'unclear', low: GROUND_AT_MOST_V, high: GROUND_LOST_V, mood: 'unsure' },
  { label: 'no ground', low: GROUND_LOST_V, high: 18, mood: 'bad' },
];

/** What reaches the head unit's plug: the feed that is always live, and the one that comes with the key. */
export const unitFeeds: ReadingStep<'ok' | 'missing' | 'low' | 'ground' | 'battery'> = measurement({
  place: 'unit',
  id: 'unit-feeds',
  short: 'Feeds and ground at the head unit’s plug',
  ask: 'What do both feeds and the ground wire read at the head unit’s plug, against battery negative?',
  phone:
    'Only with the bike’s wiring diagram in your hand: without it leave the plug alone, and say so. Keep the radio plugged in. Leave the thin twisted pair alone. Red on battery positive, never touching the frame with it: what number? Then red into the back of the plug on the wire that is always live: what number? Then on the wire that comes on with the key: what number? And on its ground wire: what number?',
  how: [
    'The bike’s wiring diagram shows which wire is which. No diagram? Leave the plug alone and get a fitter.',
    'Red on battery positive: note it.',
    'Slide red into the back of the plug, alongside the wire: the constant feed, the feed that comes with the key, then the ground.',
  ],
  why: 'Both feeds there and the screen dark: its own fuse, its ground, or the head unit itself. One missing: the wiring that feeds it.',
  tool: 'meter',
  minutes: 8,
  conditions: ['panel-off', 'key-on', 'black-on-minus', 'meter-on-dc'],
  completes: (f) => is(f, 'unit-screen', 'dark') && !is(f, 'unit-fuses', 'burnt', 'back'),
  observes: ['unit-leads'],
  probes: { red: 'battery-plus', black: 'battery-minus' },
  readings: {
    batteryV: {
      label: 'Battery positive',
      unit: 'V',
      possible: [0, 16],
      impossible: 'A 12 V battery reads 16 V at most. Is the meter on DC volts, black on the negative post?',
    },
    constantV: feed('Feed that is always live'),
    keyV: feed('Feed with the key'),
    groundV: feed('Its ground wire'),
  },
  bands: (reading, values) =>
    reading === 'groundV'
      ? GROUND_BANDS
      : reading === 'batteryV' || values['batteryV'] === undefined || values['batteryV'] < NO_BATTERY_V
        ? null
        : feedBands(values['batteryV']),
  judge: (values) => {
    if ((values['batteryV'] ?? 12) < NO_BATTERY_V) return 'battery';
    const bands = feedBands(values['batteryV'] ?? 12);
    const labels = [values['constantV'], values['keyV']].map((valueV) => bandOf(bands, valueV ?? 0)?.label);
    if (labels.includes('missing')) return 'missing';
    if ((values['groundV'] ?? 0) >= GROUND_LOST_V) return 'ground';
    return labels.includes('low') ? 'low' : 'ok';
  },
  formula: 'each feed = battery, less 0.5 V at most',
  healthy: () =>
    `Healthy is within ${FEED_LOSES_AT_MOST_V} V of the battery on both, and below ${GROUND_AT_MOST_V} V on the ground wire.`,
  outcomes: {
    ok: 'both there, and the ground',
    missing: 'one is missing',
    low: 'one is low',
    ground: 'its ground is lost',
    battery: 'the battery itself gives nothing',
  },
  ifCannot: 'No wiring diagram? Look at fuses and pins, and keep probes out of it.',
});
