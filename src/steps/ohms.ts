import { coilBandOhm } from '../compute/impedance.ts';
import { formatQuantity, formatRange } from '../compute/quantity.ts';
import { copperResistanceOhm } from '../compute/wire.ts';
import { chosen, estimate } from '../rig/rig.ts';
import { type Band, bandOf, choice, measurement, type Reading, type Situation, type Values } from './step.ts';

/** More than this above the coil is a bad contact, and less than that is still healthy. Common practice, no published source. */
const CONTACT_HIGH_OHM = 1;
const CONTACT_OK_OHM = 0.3;
/** A run that reads ten times its rated ohms is open. Common practice, no published source. */
export const OPEN_RATIO = 10;

/** Makers differ: published speakers of 2 Ω read down to 1.2. Below this share of the usual least the coil is shorted. */
export const SHORTED_RATIO = 0.85;

export const ohmReading = (label: string): Reading => ({
  label,
  unit: 'Ω',
  possible: [0, Infinity],
  impossible: 'Ohms cannot be below zero. Is the key off, the plug apart and the meter on ohms?',
});
export const LEADS_OHM = {
  label: 'Probes held together',
  unit: 'Ω',
  probes: 'not drawn',
  possible: [0, 5],
  impossible: 'Two probes held together read 0.1 to 0.5 ohm. More than 5: clean the tips or change the leads.',
} as const satisfies Reading;

/** The rated ohms that the wiring can make of what is known: the least and the most. */
function ratedOhm({ rig }: Situation): { readonly low: number; readonly high: number } {
  const { low, high } = estimate(rig, 'rearRatedOhm');
  const { rearPerChannel: counted, rearWiring: wiring } = rig;
  if (wiring === 'single') return { low, high };
  // Side by side or in a row there are at least two. Known to be several, but not how: anything from one to the other.
  if (wiring === 'parallel') return { low: low / (counted ?? 2), high: high / (counted ?? 2) };
  if (wiring === 'series') return { low: low * (counted ?? 2), high: high * (counted ?? 2) };
  if (counted !== undefined) return { low: low / counted, high: high * counted };
  return { low: low / estimate(rig, 'rearPerChannel').high, high };
}

const lessLeads = (values: Values, reading: string) =>
  Math.max(0, (values[reading] ?? Infinity) - (values['leadsOhm'] ?? 0));

/** Two runs this close read the same coil: bad contacts are never alike. An estimate. */
const ALIKE_RATIO = 0.1;

/** Nobody knows the rating, and both runs read what a coil of 8 Ω reads. */
function bothEight(values: Values, situation: Situation): boolean {
  if (situation.rig.rearRatedOhm !== undefined) return false;
  const [leftOhm, rightOhm] = [lessLeads(values, 'leftOhm'), lessLeads(values, 'rightOhm')];
  const { lowOhm, highOhm } = coilBandOhm({ ratedOhm: 8 });
  const inBand = [leftOhm, rightOhm].every((ohm) => ohm >= lowOhm && ohm <= highOhm + CONTACT_OK_OHM);
  return inBand && Math.abs(leftOhm - rightOhm) <= ALIKE_RATIO * Math.max(leftOhm, rightOhm);
}

function runBands(situation: Situation, values: Values): readonly Band[] {
  const rated = bothEight(values, situation) ? { low: 8, high: 8 } : ratedOhm(situation);
  const wireOhm =
    2 *
    copperResistanceOhm({
      lengthM: estimate(situation.rig, 'rearRunM').high,
      sectionM2: estimate(situation.rig, 'rearRunM2').low,
    });
  const lowOhm = SHORTED_RATIO * coilBandOhm({ ratedOhm: rated.low }).lowOhm;
  const highOhm = coilBandOhm({ ratedOhm: rated.high }).highOhm + wireOhm;
  return [
    { label: 'shorted', low: 0, high: lowOhm, mood: 'bad' },
    { label: 'healthy', low: lowOhm, high: highOhm + CONTACT_OK_OHM, mood: 'good' },
    { label: 'unclear', low: highOhm + CONTACT_OK_OHM, high: highOhm + CONTACT_HIGH_OHM, mood: 'unsure' },
    { label: 'bad contact', low: highOhm + CONTACT_HIGH_OHM, high: OPEN_RATIO * rated.high, mood: 'bad' },
    { label: 'open', low: OPEN_RATIO * rated.high, high: Infinity, mood: 'bad' },
  ];
}

const withLeads = (bands: readonly Band[], leadsOhm: number): readonly Band[] =>
  bands.map((band) => ({ ...band, low: band.low === 0 ? 0 : band.low + leadsOhm, high: band.high + leadsOhm }));

/** A run needs nine times its coil in ohms on top of it before the ear calls it silent: 20 dB. */
const SILENCING_RATIO = 10;

/** Whether both runs have so many ohms that they explain a silent rear. */
export function silencedByOhms(values: Values, situation: Situation): boolean {
  const leastOhm = Math.min(lessLeads(values, 'leftOhm'), lessLeads(values, 'rightOhm'));
  return leastOhm >= SILENCING_RATIO * coilBandOhm({ ratedOhm: ratedOhm(situation).low }).lowOhm;
}

/** The rear speaker runs, from the plug of whatever drives them: wires, joints and coils in one reading. */
export const runOhms = measurement<'ok' | 'high' | 'open' | 'low' | 'unclear'>({
  id: 'run-ohms',
  short: 'Rear speaker runs in ohms',
  ask: 'Plug apart: how many ohms does each rear speaker run show?',
  phone:
    'Key off, rear speaker plug apart. Probes together: number? Then the two wires of the left speaker: number? And the right one?',
  how: (s) => [
    chosen(s.rig, 'rearFedBy') === 'amp'
      ? 'Key off. Pull the rear speaker plug off the amplifier.'
      : 'Key off. Open the plug of the rear loom and measure on the side toward the speakers.',
    'Meter on ohms. Hold the probes together: that is your leads.',
    'One probe on each wire of the left run, then the right run. “OL” is a reading too: type it.',
    'Move the lids while you look at the number.',
    'Just after loud music? Let the coils cool for ten minutes: hot, they read up to half more.',
  ],
  why: 'One reading from the end that feeds it covers every wire, joint and coil on the way.',
  tool: 'meter',
  minutes: 5,
  observes: ['run', 'speaker'],
  cautions: ['ohms-dead', 'key-off'],
  probes: { red: 'run-plus', black: 'run-minus' },
  readings: { leadsOhm: LEADS_OHM, leftOhm: ohmReading('Rear left run'), rightOhm: ohmReading('Rear right run') },
  bands: (reading, values, s) =>
    reading === 'leadsOhm' ? null : withLeads(runBands(s, values), values['leadsOhm'] ?? 0),
  judge: (values, s) => {
    const bands = runBands(s, values);
    const labels = ['leftOhm', 'rightOhm'].map((reading) => bandOf(bands, lessLeads(values, reading))?.label);
    if (labels.includes('open')) return 'open';
    if (labels.includes('shorted')) return 'low';
    if (labels.includes('bad contact')) return 'high';
    return labels.includes('unclear') ? 'unclear' : 'ok';
  },
  healthy: (values, s) => {
    const [, healthy] = runBands(s, values);
    const leads =
      values['leadsOhm'] === undefined
        ? 'after taking off your leads'
        : `after taking off ${formatQuantity(values['leadsOhm'], 'Ω', 2)} for your leads`;
    return `Healthy is ${formatRange(healthy?.low ?? 0, healthy?.high ?? 0, 'Ω')}, ${leads}. A tweeter behind a capacitor reads open and is healthy.`;
  },
  outcomes: { ok: 'healthy', high: 'a bad contact', open: 'open', low: 'shorted', unclear: 'between healthy and bad' },
  article: 'read-a-coil-in-ohms',
  givenUnder: ['rear-drive'],
});

/** Just after loud music a coil reads up to half more than cold. From memory, no published source. */
const HOT_RATIO = 1.5;

function coilBands(situation: Situation): readonly Band[] {
  const rated = estimate(situation.rig, 'rearRatedOhm');
  const lowOhm = SHORTED_RATIO * coilBandOhm({ ratedOhm: rated.low }).lowOhm;
  const highOhm = HOT_RATIO * coilBandOhm({ ratedOhm: rated.high }).highOhm;
  return [
    { label: 'shorted', low: 0, high: lowOhm, mood: 'bad' },
    { label: 'healthy', low: lowOhm, high: highOhm, mood: 'good' },
    { label: 'unclear', low: highOhm, high: OPEN_RATIO * rated.high, mood: 'unsure' },
    { label: 'open', low: OPEN_RATIO * rated.high, high: Infinity, mood: 'bad' },
  ];
}

/** The coil by itself, at the tabs of a silent speaker. */
export const coilOhms = measurement<'ok' | 'open' | 'low' | 'unclear'>({
  id: 'coil-ohms',
  short: 'The coil by itself',
  ask: 'At the silent speaker itself, one wire off: how many ohms does the coil show?',
  phone: 'Grille off, pull one wire off the speaker. Probes on its two tabs: number?',
  how: [
    'Key off. Take the grille off and pull one wire off the speaker.',
    'One probe on each tab. Mind the cone.',
    'Type what the meter shows. Your leads are taken off here.',
  ],
  why: 'The run is open. This tells whether the coil is, or the wire before it.',
  tool: 'meter',
  minutes: 8,
  observes: ['speaker'],
  cautions: ['ohms-dead', 'cone', 'warranty'],
  probes: { red: 'speaker-plus', black: 'speaker-minus' },
  readings: { leadsOhm: LEADS_OHM, coilOhm: ohmReading('Coil') },
  bands: (reading, values, s) => (reading === 'coilOhm' ? withLeads(coilBands(s), values['leadsOhm'] ?? 0) : null),
  judge: (values, s) => {
    const label = bandOf(coilBands(s), lessLeads(values, 'coilOhm'))?.label;
    return label === 'healthy' ? 'ok' : label === 'shorted' ? 'low' : label === 'open' ? 'open' : 'unclear';
  },
  healthy: (_, s) => {
    const rated = estimate(s.rig, 'rearRatedOhm');
    const [, healthy] = coilBands(s);
    const cold = formatRange(
      coilBandOhm({ ratedOhm: rated.low }).lowOhm,
      coilBandOhm({ ratedOhm: rated.high }).highOhm,
      'Ω',
    );
    return `Healthy when cold is ${cold}. Makers differ and a hot coil reads up to half more: ${formatRange(healthy?.low ?? 0, healthy?.high ?? 0, 'Ω')} passes.`;
  },
  outcomes: { ok: 'healthy', open: 'open', low: 'shorted', unclear: 'unclear' },
  article: 'read-a-coil-in-ohms',
});

const CLEAR_OHM = 100e3;
const TOUCHING_OHM = 100;

/** Whether any rear speaker wire touches the frame. */
export const wireToFrame = measurement<'clear' | 'shorted' | 'unclear'>({
  id: 'wire-to-frame',
  short: 'Speaker wires to the frame',
  ask: 'Plug apart: what is the lowest reading from any rear speaker wire to the frame?',
  phone:
    'Key off, rear speaker plug apart. One probe on a bare bolt of the frame, the other on each wire in turn. What is the lowest number, or does it beep?',
  how: [
    'Key off, rear speaker plug apart.',
    'One probe on bright bare metal of the frame, the other on each of the four wires.',
    'Move lids, steering and seat. Type the lowest reading. “OL” is the good one.',
  ],
  why: 'A speaker wire on the frame shorts half of a bridge output to ground. The output then protects itself, or dies.',
  tool: 'meter',
  minutes: 6,
  observes: ['run'],
  cautions: ['ohms-dead', 'key-off'],
  probes: { red: 'run-plus', black: 'frame' },
  readings: { lowestOhm: ohmReading('Lowest of the four wires') },
  bands: () => [
    { label: 'touching', low: 0, high: TOUCHING_OHM, mood: 'bad' },
    { label: 'unclear', low: TOUCHING_OHM, high: CLEAR_OHM, mood: 'unsure' },
    { label: 'clear', low: CLEAR_OHM, high: Infinity, mood: 'good' },
  ],
  judge: (values) => {
    const ohm = values['lowestOhm'] ?? Infinity;
    return ohm < TOUCHING_OHM ? 'shorted' : ohm < CLEAR_OHM ? 'unclear' : 'clear';
  },
  healthy: () => 'Healthy is above 100 kΩ or OL on every wire. Below 100 Ω, or a beep, a wire touches.',
  outcomes: { clear: 'clear of the frame', shorted: 'a wire touches the frame', unclear: 'unclear, perhaps damp' },
});

/** Where along an open run the open place is, at the docking plug. */
export const runSplit = choice<'bike-side' | 'contacts' | 'lid-side' | 'no-plug'>({
  id: 'run-split',
  short: 'Where the run is open',
  ask: 'Lid held still: from which side of the lid plug can you see the coil?',
  phone:
    'Measure at the lid plug. Plug apart, lid half: ohms? Then plug together, just before it on the bike side: ohms?',
  how: [
    'Key off. Lid plug apart, lid half: is the coil there?',
    'Plug together, on the bike’s side close to the plug: is the coil there?',
    'Keep the lid still for both.',
  ],
  why: 'Contacts, lid lead and bike loom look the same from the far end. Two readings at the plug split them.',
  tool: 'meter',
  minutes: 5,
  observes: ['run', 'speaker'],
  cautions: ['ohms-dead', 'key-off'],
  options: {
    'lid-side': 'Not even from the lid half',
    contacts: 'From the lid half, but not through the plug',
    'bike-side': 'Through the plug, but not from the far end',
    'no-plug': 'There is no such plug',
  },
  outcomes: {
    'lid-side': 'open in the lid',
    contacts: 'open in the plug',
    'bike-side': 'open in the bike’s loom',
    'no-plug': 'no such plug',
  },
  givenUnder: ['run-ohms'],
});
