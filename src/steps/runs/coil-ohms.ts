import { formatRange } from '../../compute/quantity.ts';
import { CORNERS, type Corner } from '../../rig/corner.ts';
import { is } from '../outcome.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation } from '../step.ts';
import { type OfEach, ofEach, withSubject } from '../subject.ts';
import { belowLeads, coilPassesOhm, LEADS_OHM, lessLeads, OPEN_RATIO, ohmReading, withLeads } from './ohms.ts';
import { speakerOhm } from './rated-ohm.ts';
import { atSpeaker, axleOfSpeaker, type OneSpeaker, silentSpeaker, theSpeaker } from './silent-speaker.ts';

function coilBands(subject: OneSpeaker, situation: Situation): readonly Band[] {
  const rated = speakerOhm(situation, axleOfSpeaker(subject, situation));
  const { lowOhm, highOhm } = coilPassesOhm(rated);
  return [
    { label: 'shorted', low: 0, high: lowOhm, mood: 'bad' },
    { label: 'healthy', low: lowOhm, high: highOhm, mood: 'good' },
    { label: 'unclear', low: highOhm, high: OPEN_RATIO * rated.high, mood: 'unsure' },
    { label: 'open', low: OPEN_RATIO * rated.high, high: Infinity, mood: 'bad' },
  ];
}

/** The coil by itself, at the tabs of a speaker. */
export const coilOhms: OfEach<ReadingStep<'ok' | 'open' | 'low' | 'unclear'>, 'silent', Corner> = ofEach(
  ['silent', ...CORNERS],
  (subject) =>
    measurement({
      place: 'runs',
      id: 'coil-ohms',
      short: atSpeaker('The coil by itself', subject),
      ask: (s) => `At ${theSpeaker(subject, s)} itself, one wire off: how many ohms does the coil read?`,
      phone: (s) =>
        `Hold the probes together: what number? Then one on each tab of ${theSpeaker(subject, s)}, mind the cone: what number?`,
      how: [
        'One probe on each tab. Mind the cone.',
        'Type what the meter shows. We subtract your leads.',
        'Just after loud music? Let it cool for ten minutes.',
      ],
      why: 'A run that reads wrong has a bad coil, or a bad wire before it. This tells you which.',
      tool: 'meter',
      minutes: 8,
      conditions: ['key-off', withSubject('grille-off', subject, 'silent'), 'meter-on-ohms'],
      sensible: (f) =>
        is(f, withSubject('run-ohms', axleOfSpeaker(subject, f), 'rear'), 'open', 'low', 'high', 'unclear'),
      observes: ['speaker'],
      probes: { red: 'speaker-plus', black: 'speaker-minus' },
      readings: { leadsOhm: LEADS_OHM, coilOhm: ohmReading('Coil') },
      unusable: belowLeads(['coilOhm']),
      bands: (reading, values, s) =>
        reading === 'coilOhm' ? withLeads(coilBands(subject, s), values['leadsOhm'] ?? 0) : null,
      judge: (values, s) => {
        const label = bandOf(coilBands(subject, s), lessLeads(values, 'coilOhm'))?.label;
        return label === 'healthy' ? 'ok' : label === 'shorted' ? 'low' : label === 'open' ? 'open' : 'unclear';
      },
      formula: 'reading − leads = 0.7 to 0.95 of the rated ohms',
      healthy: (_, s) => {
        const [, healthy] = coilBands(subject, s);
        return `Healthy is ${formatRange(healthy?.low ?? 0, healthy?.high ?? 0, 'Ω')}, after taking off your leads. Just after loud music it reads up to half as much again.`;
      },
      outcomes: { ok: 'healthy', open: 'open', low: 'shorted', unclear: 'unclear' },
      article: 'read-a-coil-in-ohms',
    }),
  silentSpeaker,
);
