import { formatRange } from '../../compute/quantity.ts';
import { estimate } from '../../rig/rig.ts';
import { is } from '../outcome.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation } from '../step.ts';
import { belowLeads, coilPassesOhm, LEADS_OHM, lessLeads, OPEN_RATIO, ohmReading, withLeads } from './ohms.ts';

function coilBands(situation: Situation): readonly Band[] {
  const rated = estimate(situation.rig, 'rearRatedOhm');
  const { lowOhm, highOhm } = coilPassesOhm(rated);
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
  phone: 'Probes held together: number? Then one on each tab of the speaker, mind the cone: number?',
  how: [
    'One probe on each tab. Mind the cone.',
    'Type what the meter shows. Your leads are taken off here.',
    'Just after loud music? Let it cool for ten minutes.',
  ],
  why: 'The run is open. This tells whether the coil is, or the wire before it.',
  tool: 'meter',
  minutes: 8,
  conditions: ['key-off', 'grille-off', 'meter-on-ohms'],
  sensible: (f) => is(f, 'run-ohms', 'open', 'low', 'high', 'unclear'),
  observes: ['speaker'],
  probes: { red: 'speaker-plus', black: 'speaker-minus' },
  readings: { leadsOhm: LEADS_OHM, coilOhm: ohmReading('Coil') },
  unusable: belowLeads(['coilOhm']),
  bands: (reading, values, s) => (reading === 'coilOhm' ? withLeads(coilBands(s), values['leadsOhm'] ?? 0) : null),
  judge: (values, s) => {
    const label = bandOf(coilBands(s), lessLeads(values, 'coilOhm'))?.label;
    return label === 'healthy' ? 'ok' : label === 'shorted' ? 'low' : label === 'open' ? 'open' : 'unclear';
  },
  healthy: (_, s) => {
    const [, healthy] = coilBands(s);
    return `Healthy is ${formatRange(healthy?.low ?? 0, healthy?.high ?? 0, 'Ω')}, after taking off your leads. Just after loud music it reads up to half more.`;
  },
  outcomes: { ok: 'healthy', open: 'open', low: 'shorted', unclear: 'unclear' },
  article: 'read-a-coil-in-ohms',
});
