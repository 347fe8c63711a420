import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { is } from '../outcome.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation } from '../step.ts';
import { acReading } from '../tools/ac-volts.ts';
import { cleanOffV, FRONT_PAIR, speakersOff } from './tones.ts';

/** The top clean step over the full clean output: below the first an amplified profile, above the second a full one. */
const LOWERED_RATIO = 0.6;

const FULL_RATIO = 0.8;

const topBands = (situation: Situation): readonly Band[] => {
  const { lowV, highV } = cleanOffV(situation);
  return [
    { label: 'lowered', low: 0, high: LOWERED_RATIO * lowV, mood: 'good' },
    { label: 'unclear', low: LOWERED_RATIO * lowV, high: FULL_RATIO * lowV, mood: 'unsure' },
    { label: 'full', low: FULL_RATIO * lowV, high: 1.05 * highV, mood: 'good' },
    { label: 'clipped', low: 1.05 * highV, high: 16, mood: 'unsure' },
  ];
};

/** The loudest clean step, found with 80 Hz: on an unaltered profile that tone reaches the limit 13 dB before the rest. */
export const topStep: ReadingStep<'full' | 'lowered' | 'unclear'> = measurement({
  place: 'profile',
  id: 'top-step',
  short: 'Loudest clean step',
  ask: 'Engine off, 80 Hz tone: what does the front pair read at the loudest clean step?',
  phone:
    'The 80 tone. Come up one step at a time and read the volts. When a step adds less than the one before, go one step back: what does it read there?',
  how: (s) => [
    ...speakersOff(s),
    ...(s.rig.amps?.length ? [] : ['No amplifier on the front: bursts under 5 seconds, ears covered.']),
    'Bass and treble flat, loudness off, speed volume off, phone volume full.',
    'Play the 80 Hz tone. Come up one step at a time and watch the volts.',
    'When the steps get smaller, or the scale ends, go one step back. Read there.',
  ],
  why: 'Full level reaches the supply’s limit. An amplified profile stops about 7 dB below it, whatever the volume.',
  tool: 'meter',
  minutes: 5,
  conditions: ['controls-flat', 'amp-outputs-off', 'panel-off', 'tone-80', 'meter-on-ac'],
  sensible: (f) => !is(f, 'unit-kind', 'replaced'),
  observes: ['settings', 'profile', 'unit'],
  cautions: ['bridge'],
  tones: ['80hz'],
  probes: FRONT_PAIR,
  readings: { topV: acReading('Front pair, loudest clean step') },
  bands: (_, __, s) => topBands(s),
  judge: (values, s) => {
    const label = bandOf(topBands(s), values['topV'] ?? 0)?.label;
    return label === 'lowered' || label === 'full' ? label : 'unclear';
  },
  healthy: (_, s) => {
    const { lowV, highV } = cleanOffV(s);
    return `Full level is ${formatRange(FULL_RATIO * lowV, 1.05 * highV, 'V')} with the engine off. A lowered one stays below ${formatQuantity(LOWERED_RATIO * lowV, 'V', 2)}.`;
  },
  outcomes: { full: 'full level', lowered: 'lowered level', unclear: 'unclear' },
  article: 'why-amplified-without-an-amplifier-is-quieter',
});
