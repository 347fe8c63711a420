import { UNDERVOLTAGE_CUT_HIGHEST_V, UNDERVOLTAGE_CUT_LOWEST_V } from '../../compute/amp-supply.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { goesOffAtTimes, mayBeOff, toldToGoOff } from '../amplifier/seen-on.ts';
import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { ampName, atAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { is } from '../outcome.ts';
import { type Band, labelIn, measurement, type ReadingStep, type Situation } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { dcReading, MOST_V } from '../tools/dc-volts.ts';
import { batteryV } from './amp-feed.ts';
import { fuseStaysOut, supplyMayFail } from './may-fail.ts';
import { nothingBelowV } from './terminal-bands.ts';

function lowestBands(situation: Situation): readonly Band[] {
  const nothingV = nothingBelowV(batteryV(situation));
  return [
    { label: 'no supply', low: -0.5, high: nothingV, mood: 'bad' },
    { label: 'pulled down', low: nothingV, high: UNDERVOLTAGE_CUT_LOWEST_V, mood: 'bad' },
    {
      label: 'depends on the amplifier',
      low: UNDERVOLTAGE_CUT_LOWEST_V,
      high: UNDERVOLTAGE_CUT_HIGHEST_V,
      mood: 'unsure',
    },
    { label: 'holds', low: UNDERVOLTAGE_CUT_HIGHEST_V, high: MOST_V, mood: 'good' },
  ];
}

/** The least that its terminals see while it starts or goes off: a sag that a steady reading hides. */
export const lowestVolts: OfEach<ReadingStep<'holds' | 'unclear' | 'sags' | 'none'>, 'meant', AmpPair> = ofEachAmp(
  measurement({
    place: 'supply',
    id: 'lowest-volts',
    short: atAmp('Lowest volts at its terminals'),
    ask: (s) =>
      `Meter on MIN, across positive and ground of ${ampName(s)}: what is the lowest voltage while it ${toldToGoOff(s) ? 'cuts out' : 'tries to start'}?`,
    phone: (s) =>
      `Meter on DC, MIN button pressed. One probe on the amplifier’s thick positive, one on its ground, touching nothing else. Key off, key on, radio on${toldToGoOff(s) ? ', and make it cut out' : ''}: what is the lowest number?`,
    how: [
      'Look for MIN, MIN/MAX or LOW on the meter. Hold both probes still: a slip reads as 0.',
      'Key off, MIN pressed, key on, music on. If it cuts out only now and then, do whatever makes it cut out.',
      'Read the lowest number only once its light has settled.',
    ],
    why: 'With a bad contact the meter sees full volts until the amplifier draws its first gulp: they collapse, it gives up, and they are back.',
    tool: 'meter',
    minutes: 5,
    conditions: ['amp-uncovered', 'head-unit-playing', 'meter-on-dc'],
    sensible: (f) =>
      supplyMayFail(f) &&
      !fuseStaysOut(f) &&
      (mayBeOff(f) || goesOffAtTimes(f)) &&
      is(f, 'amp-terminals', 'ok', 'unclear', 'sags', 'cannot'),
    observes: ['amp-supply'],
    cautions: ['wakes-loud'],
    probes: { red: 'amp-plus', black: 'amp-ground' },
    readings: { lowestV: dcReading('Lowest') },
    bands: (_, __, s) => lowestBands(s),
    judge: ({ lowestV = 0 }, s) => {
      const label = labelIn(lowestBands(s), lowestV);
      if (label === 'no supply') return 'none';
      return label === 'pulled down' ? 'sags' : label === 'holds' ? 'holds' : 'unclear';
    },
    formula: 'lowest = battery − I · R of both paths, while the capacitors charge',
    healthy: () =>
      `Healthy is above ${formatQuantity(UNDERVOLTAGE_CUT_HIGHEST_V, 'V', 3)}. Amplifiers cut out below ${formatRange(UNDERVOLTAGE_CUT_LOWEST_V, UNDERVOLTAGE_CUT_HIGHEST_V, 'V')}.`,
    outcomes: {
      holds: 'its supply holds',
      unclear: 'near its cut-out',
      sags: 'pulled down',
      none: 'no supply at all',
    },
    article: 'voltage-drop-under-load',
    ifCannot: 'A meter without MIN misses the dip. Without it we load the supply with a lamp.',
  }),
);
