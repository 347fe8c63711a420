import { COIL_HIGHEST_RATIO, coilBandOhm } from '../../compute/impedance.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { copperResistanceOhm } from '../../compute/wire.ts';
import type { Axle } from '../../rig/corner.ts';
import { chosen, estimate } from '../../rig/rig.ts';
import { valuesIn } from '../outcome.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation, type Values } from '../step.ts';
import { type OfEach, ofEach } from '../subject.ts';
import { wholeAtTheStand } from '../told/comes-and-goes.ts';
import { concernsAxle } from '../told/silent-side.ts';
import { belowLeads, CONTACT_OK_OHM, coilPassesOhm, LEADS_OHM, lessLeads, ohmReading, withLeads } from './ohms.ts';
import { ratedOhm, speakerOhm } from './rated-ohm.ts';

/** More than this above the coil is a bad contact. Common practice, no published source. */
const CONTACT_HIGH_OHM = 1;

/**
 * A film, green or water in a plug still passes what a meter sends through it: some hundreds of ohms to some hundreds of
 * thousands. A wire that ends somewhere reads OL. Common practice, no published source.
 */
const FILM_MOST_OHM = 1e6;

/** Two runs this close read the same coil: bad contacts are never alike. An estimate. */
const ALIKE_RATIO = 0.1;

/** Nobody knows the rating, and both runs read what a coil of 8 Ω reads. */
function bothEight(values: Values, situation: Situation, axle: Axle): boolean {
  if (!speakerOhm(situation, axle).assumed) return false;
  const [leftOhm, rightOhm] = [lessLeads(values, 'leftOhm'), lessLeads(values, 'rightOhm')];
  const { lowOhm, highOhm } = coilBandOhm({ ratedOhm: 8 });
  const inBand = [leftOhm, rightOhm].every((ohm) => ohm >= lowOhm && ohm <= highOhm + CONTACT_OK_OHM);
  return inBand && Math.abs(leftOhm - rightOhm) <= ALIKE_RATIO * Math.max(leftOhm, rightOhm);
}

/** Two sound coils of a kind read at least this much of each other, contacts aside, also with one still warm. An estimate. */
const OF_THE_OTHER_RATIO = 0.7;

/** Both wires of the longest and thinnest run that it may be. */
const wiresOhm = ({ rig }: Situation) =>
  2 * copperResistanceOhm({ lengthM: estimate(rig, 'rearRunM').high, sectionM2: estimate(rig, 'rearRunM2').low });

/**
 * Left and right are the same speaker on every bike. Where nobody knows its rating, the run that reads more says what it
 * must be at least, and one that reads far less may be half shorted, though it would pass by itself.
 */
function leastLikeTheOther(values: Values, situation: Situation, axle: Axle, highOhm: number): number {
  if (!speakerOhm(situation, axle).assumed) return 0;
  const mostOhm = Math.max(lessLeads(values, 'leftOhm'), lessLeads(values, 'rightOhm'));
  if (mostOhm > highOhm) return 0;
  const ratedOhm = (mostOhm - wiresOhm(situation) - CONTACT_OK_OHM) / COIL_HIGHEST_RATIO;
  const passesOhm = ratedOhm > 0 ? coilPassesOhm({ low: ratedOhm, high: ratedOhm }).lowOhm : 0;
  return Math.max(passesOhm, OF_THE_OTHER_RATIO * mostOhm - CONTACT_OK_OHM);
}

function runBands(situation: Situation, values: Values, axle: Axle): readonly Band[] {
  const rated = bothEight(values, situation, axle) ? { low: 8, high: 8 } : ratedOhm(situation, axle);
  const { lowOhm, highOhm: coilOhm } = coilPassesOhm(rated);
  const highOhm = coilOhm + wiresOhm(situation);
  const contactOhm = highOhm - CONTACT_OK_OHM + CONTACT_HIGH_OHM;
  const alikeOhm = leastLikeTheOther(values, situation, axle, highOhm);
  return [
    { label: 'shorted', low: 0, high: lowOhm, mood: 'bad' },
    ...(alikeOhm > lowOhm
      ? [{ label: 'far less than the other', low: lowOhm, high: alikeOhm, mood: 'unsure' } as const]
      : []),
    { label: 'healthy', low: Math.max(lowOhm, alikeOhm), high: highOhm, mood: 'good' },
    { label: 'unclear', low: highOhm, high: contactOhm, mood: 'unsure' },
    { label: 'bad contact', low: contactOhm, high: FILM_MOST_OHM, mood: 'bad' },
    { label: 'open', low: FILM_MOST_OHM, high: Infinity, mood: 'bad' },
  ];
}

type Outcome = 'ok' | 'high' | 'open' | 'low' | 'unclear';

/** What a run in each band means, the worst first. */
const MEANS: readonly (readonly [label: string, outcome: Outcome])[] = [
  ['open', 'open'],
  ['shorted', 'low'],
  ['bad contact', 'high'],
  ['unclear', 'unclear'],
  ['far less than the other', 'unclear'],
];

/** How bad each of two runs is: its place in the list above, beyond it when it is healthy. */
function howBad(values: Values, situation: Situation, axle: Axle): readonly number[] {
  const bands = runBands(situation, values, axle);
  return ['leftOhm', 'rightOhm'].map((reading) => {
    const label = bandOf(bands, lessLeads(values, reading))?.label;
    const found = MEANS.findIndex(([name]) => name === label);
    return found < 0 ? MEANS.length : found;
  });
}

/** The run of an axle that reads worse than the other. */
export function worseRun(situation: Situation, axle: Axle): 'left' | 'right' | undefined {
  const { id } = runOhms.of(axle);
  const values = valuesIn(situation.facts[id], runOhms as unknown as ReadingStep);
  if (values['leftOhm'] === undefined || values['rightOhm'] === undefined) return undefined;
  const [left = 0, right = 0] = howBad(values, situation, axle);
  return left === right ? undefined : left < right ? 'left' : 'right';
}

/** What differs from axle to axle. */
const OF_AXLE = {
  rear: {
    Name: 'Rear',
    fedBy: 'rearFedBy',
    move: 'Move the lids, and have somebody sit down, while you look at the number.',
  },
  front: {
    Name: 'Front',
    fedBy: 'frontFedBy',
    move: 'Turn the bars from lock to lock while you look at the number.',
  },
} as const;

/** The speaker runs of an axle, from the plug of whatever drives them: wires, joints and coils in one reading. */
export const runOhms: OfEach<ReadingStep<Outcome>, 'rear', 'front'> = ofEach(['rear', 'front'], (axle) => {
  const { Name, fedBy, move } = OF_AXLE[axle];
  return measurement({
    place: 'runs',
    id: 'run-ohms',
    short: `${Name} speaker runs in ohms`,
    ask: `Plug apart: how many ohms does each ${axle} speaker run read?`,
    phone: `Hold the probes together: what number? Then across the two wires of the ${axle} left speaker: what number? And of the right one?`,
    how: (s) => [
      ...(chosen(s.rig, fedBy) === 'amp' ? [] : ['Measure on the side toward the speakers.']),
      'Hold the probes together: that is what your leads read.',
      'One probe on each wire of the left run, then of the right run. “OL” is a reading too: type it.',
      'Only one speaker fitted there? Type its number for both.',
      move,
      'Just after loud music? Let the coils cool for ten minutes: hot, they read up to half as much again.',
    ],
    why: 'One reading from the end that feeds it covers every wire, joint and coil on the way.',
    tool: 'meter',
    minutes: 5,
    conditions: ['key-off', `${axle}-plug-apart`, 'meter-on-ohms'],
    sensible: (f) => concernsAxle(f, axle) && !wholeAtTheStand(f),
    observes: ['run', 'speaker'],
    probes: { red: 'run-plus', black: 'run-minus' },
    readings: {
      leadsOhm: LEADS_OHM,
      leftOhm: ohmReading(`${Name} left run`),
      rightOhm: ohmReading(`${Name} right run`),
    },
    unusable: belowLeads(['leftOhm', 'rightOhm']),
    bands: (reading, values, s) =>
      reading === 'leadsOhm' ? null : withLeads(runBands(s, values, axle), values['leadsOhm'] ?? 0),
    judge: (values, s) => {
      return MEANS[Math.min(...howBad(values, s, axle))]?.[1] ?? 'ok';
    },
    formula: 'reading − leads = coil (0.7 to 0.95 of its rated ohms) + copper (ρ · 2 l ÷ A)',
    healthy: (values, s) => {
      const healthy = runBands(s, values, axle).find(({ label }) => label === 'healthy');
      const leads =
        values['leadsOhm'] === undefined
          ? 'after taking off your leads'
          : `after taking off ${formatQuantity(values['leadsOhm'], 'Ω', 2)} for your leads`;
      return `Healthy is ${formatRange(healthy?.low ?? 0, healthy?.high ?? 0, 'Ω')}, ${leads}. A tweeter behind a capacitor reads open and is healthy.`;
    },
    outcomes: {
      ok: 'healthy',
      high: 'a bad contact',
      open: 'open',
      low: 'shorted',
      unclear: 'between healthy and bad',
    },
    article: 'read-a-coil-in-ohms',
    // What drives the front is asked by itself, or next to the rear.
    givenUnder: axle === 'rear' ? ['rear-drive'] : ['front-drive', 'front-fed'],
  });
});
