import { RIPPLE_BAD_V, RIPPLE_USUAL_V } from '../../compute/alternator.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { firstOf } from '../both.ts';
import { is } from '../outcome.ts';
import { type Band, labelIn, measurement, type ReadingStep } from '../step.ts';

const POSTS = { red: 'battery-plus', black: 'battery-minus' } as const;
const MOST_V = 10;
const BANDS: readonly Band[] = [
  { label: 'smooth', low: 0, high: RIPPLE_USUAL_V, mood: 'good' },
  { label: 'more than usual', low: RIPPLE_USUAL_V, high: RIPPLE_BAD_V, mood: 'unsure' },
  { label: 'far too much', low: RIPPLE_BAD_V, high: MOST_V, mood: 'bad' },
];

/** What the charging leaves on the battery: a worn one smooths little of it. */
export const batteryRipple: ReadingStep<'ok' | 'raised' | 'high'> = measurement({
  place: 'supply',
  id: 'battery-ripple',
  short: 'Battery ripple',
  ask: 'Engine idling, lights on, music off: how many AC volts do the battery posts read?',
  phone:
    'Outside only, in neutral, lights on, music off. Red on the battery positive, never touching the frame with it, black on the negative. What number at idle?',
  how: [
    'First with the engine off: AC volts at the posts must read 0. A meter that shows 20 or more there cannot be used for this.',
    'Then idling, lights on, music off. Leads clear of hot and turning parts.',
  ],
  why: 'A good battery smooths what the charging sends. A worn one lets it through; a lost diode or phase sends far more.',
  tool: 'meter',
  minutes: 3,
  conditions: ['engine-running', 'black-on-minus', 'meter-on-ac'],
  sensible: (f) => is(f, 'engine-compare', 'noise'),
  // Where it stays with every lead off it came in over the supply: nothing is said of that before it was read.
  completes: (f) => is(f, 'noise-where', 'stays'),
  observes: ['amp-supply'],
  probes: POSTS,
  readings: {
    rippleV: {
      label: 'AC at the posts',
      unit: 'V',
      possible: [0, MOST_V],
      impossible: 'No battery has so much AC on it. Does the meter read 0 there with the engine off, on AC volts?',
    },
  },
  bands: () => BANDS,
  judge: ({ rippleV = 0 }) => {
    const label = labelIn(BANDS, rippleV);
    return label === 'smooth' ? 'ok' : label === 'far too much' ? 'high' : 'raised';
  },
  formula: 'AC at the posts = ripple current of the charging · inner ohms of the battery',
  healthy: () =>
    `Usual: up to ${formatQuantity(RIPPLE_USUAL_V, 'V')}. Above ${formatQuantity(RIPPLE_BAD_V, 'V')} something is bad: the battery, a diode or a phase.`,
  both: firstOf('high', 'raised', 'ok'),
  outcomes: { ok: 'smooth', raised: 'more ripple than usual', high: 'far too much ripple' },
  article: 'noise-and-ground-loops',
  ifCannot: 'Skip it: how the starter spins tells part of it.',
});
