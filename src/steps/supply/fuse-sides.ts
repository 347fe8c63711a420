import { formatRange } from '../../compute/quantity.ts';
import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { ampName, atAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { is } from '../outcome.ts';
import { labelIn, measurement, type ReadingStep } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { dcReading } from '../tools/dc-volts.ts';
import { batteryV } from './amp-feed.ts';
import { fuseStaysOut, supplyMayFail } from './may-fail.ts';
import { DRIFT_V, NEAR_V, plusBands } from './terminal-bands.ts';

/** Both sides of the main fuse, while it sits in its holder. */
export const fuseSides: OfEach<ReadingStep<'whole' | 'sags' | 'open' | 'no-feed'>, 'meant', AmpPair> = ofEachAmp(
  measurement({
    place: 'supply',
    id: 'fuse-sides',
    short: atAmp('Both sides of the main fuse'),
    ask: (s) => `What DC voltage is on each side of the main fuse of ${ampName(s)}?`,
    phone:
      'Leave the fuse in its holder. Red on the metal at one end of the fuse, then at the other, touching nothing else: what two numbers?',
    how: [
      'The fuse is in the positive lead, a hand’s width from the battery. Leave it in.',
      'Red probe on the battery side of the holder, then on the amplifier side.',
    ],
    why: 'A fuse that looks whole can be open at its cap. Two readings tell you whether volts go in and whether they come out.',
    tool: 'meter',
    minutes: 3,
    conditions: ['black-on-minus', 'meter-on-dc'],
    sensible: (f) => supplyMayFail(f) && !fuseStaysOut(f) && is(f, 'amp-terminals', 'plus-open', 'sags', 'cannot'),
    observes: ['amp-supply'],
    cautions: ['hot'],
    probes: { red: 'fuse-out', black: 'battery-minus' },
    readings: {
      inV: { ...dcReading('Battery side'), probes: { red: 'fuse-in', black: 'battery-minus' } },
      outV: dcReading('Amplifier side'),
    },
    bands: (_, __, s) => plusBands(batteryV(s)),
    judge: (values, s) => {
      const bands = plusBands(batteryV(s));
      const [comesIn, comesOut] = ['inV', 'outV'].map((reading) => labelIn(bands, values[reading] ?? 0));
      if (comesIn === 'no supply') return 'no-feed';
      if (comesOut === 'no supply') return 'open';
      return comesIn === 'healthy' && comesOut === 'healthy' ? 'whole' : 'sags';
    },
    formula: 'lost across the fuse = I · R of fuse and holder, and I is next to nothing',
    healthy: (_, s) => `Healthy is ${formatRange(batteryV(s) - NEAR_V, batteryV(s) + DRIFT_V, 'V')} on both sides.`,
    outcomes: {
      whole: 'volts on both sides',
      sags: 'too few volts on a side',
      open: 'volts go in, none come out',
      'no-feed': 'no volts go in',
    },
    givenUnder: ['amp-terminals'],
    ifCannot: 'Key off, pull the fuse and look at it instead.',
  }),
);
