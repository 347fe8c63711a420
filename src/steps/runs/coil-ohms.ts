import { coilBandOhm } from '../../compute/impedance.ts';
import { formatRange } from '../../compute/quantity.ts';
import { estimate } from '../../rig/rig.ts';
import { is } from '../outcome.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation } from '../step.ts';
import { LEADS_OHM, lessLeads, OPEN_RATIO, ohmReading, SHORTED_RATIO, withLeads } from './ohms.ts';

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
export const coilOhms: ReadingStep<'ok' | 'open' | 'low' | 'unclear'> = measurement({
  place: 'runs',
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
  conditions: ['key-off', 'grille-off', 'meter-on-ohms'],
  sensible: (f) => is(f, 'run-ohms', 'open', 'low', 'high', 'unclear'),
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
