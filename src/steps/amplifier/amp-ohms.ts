import { ampMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { ohmReading } from '../runs/ohms.ts';
import { type Band, labelIn, measurement, type ReadingStep } from '../step.ts';
import { ofTheLead } from '../supply/unfused.ts';
import { mayBeOff, mayProtectItself, staysOn } from './seen-on.ts';

/** Two wires that touch, or transistors that are gone, read less than this. Common practice, no published source. */
const SHORT_OHM = 3;
/** An amplifier that is off has some kilohms between its terminals; water leaves far less. Common practice, no published source. */
const DRY_OHM = 1_500;

const INSIDE_BANDS: readonly Band[] = [
  { label: 'shorted', low: 0, high: SHORT_OHM, mood: 'bad' },
  { label: 'leaks', low: SHORT_OHM, high: DRY_OHM, mood: 'bad' },
  { label: 'healthy', low: DRY_OHM, high: Infinity, mood: 'good' },
];

/** What is between its two supply terminals with nothing on them: water and a dead output stage do not look alike there. */
export const ampOhms: ReadingStep<'ok' | 'leaks' | 'shorted'> = measurement({
  place: 'amplifier',
  id: 'amp-ohms',
  short: 'Ohms from its positive to its ground',
  ask: (s) =>
    ofTheLead(
      'Main fuse out: how many ohms from the amplifier’s positive terminal to its ground terminal, once the reading stops climbing?',
      s,
    ),
  phone: (s) =>
    ofTheLead(
      'Main fuse out, thin remote wire off. Red on the amplifier’s thick positive terminal, black on its ground: the number climbs. Where does it stop?',
      s,
    ),
  how: [
    'Red on its positive terminal, black on its ground terminal. Hold still: its capacitors fill, and the number climbs.',
    'Type where it stops, or what it reads after a minute. “OL” is a reading too.',
  ],
  why: 'A dry amplifier has thousands of ohms there. Water leaves tens or hundreds, a burnt-out one next to none.',
  tool: 'meter',
  minutes: 4,
  conditions: ['key-off', 'amp-uncovered', 'fuse-out', 'remote-off', 'meter-on-ohms'],
  sensible: (f) =>
    ampMayBeThere(f) &&
    !staysOn(f) &&
    (mayBeOff(f) || mayProtectItself(f)) &&
    !is(f, 'remote-jumper', 'wakes') &&
    !is(f, 'amp-terminals', 'plus-open', 'ground-open', 'sags'),
  observes: ['amp'],
  probes: { red: 'amp-plus', black: 'amp-ground' },
  readings: { insideOhm: ohmReading('Positive to ground') },
  bands: () => INSIDE_BANDS,
  judge: ({ insideOhm = 0 }) => {
    const label = labelIn(INSIDE_BANDS, insideOhm);
    return label === 'healthy' ? 'ok' : label === 'leaks' ? 'leaks' : 'shorted';
  },
  formula: '1 ÷ R = 1 ÷ R of a dry amplifier (some kΩ) + 1 ÷ R of what leaks',
  healthy: () => 'Healthy is some thousands of ohms, or OL. It climbs at first, while capacitors fill.',
  outcomes: { ok: 'nothing leaks inside', leaks: 'current leaks inside', shorted: 'next to no ohms' },
  ifCannot: 'Skip it: a look into the plugs and vents finds most water.',
});
