import { coilBandOhm } from '../../compute/impedance.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { ampEstimate, estimate } from '../../rig/rig.ts';
import { mayProtectItself } from '../amplifier/seen-on.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { ampName, ampPair, atAmp, theAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { type Band, labelIn, measurement, type ReadingStep, type Situation, type Values } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { belowLeads, LEADS_OHM, ohmReading, SHORTED_RATIO } from './ohms.ts';

/** Two speakers of the ohms that an amplifier is rated into, side by side, read less than this share of them. Common practice, no published source. */
const HEAVY_RATIO = 0.45;
/** And up to this share of them they may, on one that is made for more ohms than is known. */
const MAY_BE_HEAVY_RATIO = 0.5;

/** The fewest ohms that the speakers on one channel can be rated at, on what is known of this bike. */
function leastRatedOhm(situation: Situation): number {
  const { rig } = situation;
  const rear = estimate(rig, 'rearRatedOhm').low;
  const count = rig.rearWiring === 'series' ? 1 : Math.max(1, Math.round(rig.rearPerChannel ?? 2));
  const perRear = rig.rearWiring === 'single' ? rear : rear / count;
  const front = estimate(rig, 'frontRatedOhm').low;
  if (ampPair(situation) === 'front') return front;
  return theAmp(situation).drives === 'both' ? Math.min(front, perRear) : perRear;
}

/** Two wires that touch, or a coil burnt to a lump, read less than this. Two coils side by side read more. Common practice, no published source. */
const TOUCHING_OHM = 0.5;

function runBands(situation: Situation): readonly Band[] {
  const tooFewOhm = SHORTED_RATIO * coilBandOhm({ ratedOhm: leastRatedOhm(situation) }).lowOhm;
  const shortedOhm = Math.min(TOUCHING_OHM, tooFewOhm);
  const rated = ampEstimate(theAmp(situation), 'ratedOhm');
  const heavyOhm = Math.max(tooFewOhm, HEAVY_RATIO * rated.low);
  // Where nobody knows what it is made for, some ohms are too few for one amplifier and fine for another.
  const fineOhm = rated.high > rated.low ? Math.max(heavyOhm, MAY_BE_HEAVY_RATIO * rated.high) : heavyOhm;
  const maybe: Band = {
    label: `too few, if it is made for ${formatQuantity(rated.high, 'Ω')}`,
    low: heavyOhm,
    high: fineOhm,
    mood: 'unsure',
  };
  return [
    { label: 'shorted', low: 0, high: shortedOhm, mood: 'bad' },
    { label: 'too few ohms', low: shortedOhm, high: heavyOhm, mood: 'bad' },
    ...(fineOhm > heavyOhm ? [maybe] : []),
    { label: 'not shorted', low: fineOhm, high: Infinity, mood: 'good' },
  ];
}

const withoutLeads = ({ lowestOhm = Infinity, leadsOhm = 0 }: Values) => Math.max(0, lowestOhm - leadsOhm);

export const ampRuns: OfEach<ReadingStep<'ok' | 'unclear' | 'low' | 'heavy'>, 'meant', AmpPair> = ofEachAmp(
  measurement({
    place: 'runs',
    id: 'amp-runs',
    short: atAmp('Its speaker runs in ohms'),
    ask: (s) => `Plugs off: what is the lowest reading of any speaker run of ${ampName(s)}, in ohms?`,
    phone:
      'Hold the probes together: what number? Then across the two wires of each speaker run in turn: what is the lowest number?',
    how: [
      'Look in its papers for the fewest ohms that it is made for, and note it in “My bike”.',
      'Hold the probes together: that is what your leads read.',
      'One probe on each wire of a run. Do every run of this amplifier, front and rear if it drives both.',
      'Type the lowest number.',
    ],
    why: 'Two wires that touch, or a burnt coil, leave next to no ohms, and the amplifier shuts down to save itself.',
    tool: 'meter',
    minutes: 5,
    conditions: ['key-off', 'amp-uncovered', 'amp-outputs-off', 'meter-on-ohms'],
    sensible: (f) => ampMayBeThere(f) && mayProtectItself(f),
    observes: ['run', 'speaker'],
    probes: { red: 'run-plus', black: 'run-minus' },
    readings: {
      leadsOhm: LEADS_OHM,
      lowestOhm: ohmReading('Lowest of its runs'),
    },
    unusable: belowLeads(['lowestOhm']),
    bands: (reading, { leadsOhm = 0 }, s) =>
      reading === 'lowestOhm'
        ? runBands(s).map((band) => ({
            ...band,
            low: band.low === 0 ? 0 : band.low + leadsOhm,
            high: band.high + leadsOhm,
          }))
        : null,
    judge: (values, s) => {
      const label = labelIn(runBands(s), withoutLeads(values));
      if (label === 'shorted') return 'low';
      return label === 'too few ohms' ? 'heavy' : label === 'not shorted' ? 'ok' : 'unclear';
    },
    formula: 'reading − leads = coil (0.7 to 0.95 of its rated ohms) + copper (ρ · 2 l ÷ A)',
    healthy: (_, s) =>
      `Healthy is above ${formatQuantity(runBands(s).at(-1)?.low ?? 0, 'Ω', 2)}, after taking off your leads. A tweeter behind a capacitor reads open and is healthy.`,
    outcomes: {
      ok: 'no run is shorted',
      low: 'a run is shorted',
      heavy: 'too few ohms',
      unclear: 'too few for some amplifiers',
    },
    article: 'read-a-coil-in-ohms',
  }),
);
