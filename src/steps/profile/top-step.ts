import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { loweredV } from '../../rig/levels.ts';
import { is, numberIn } from '../outcome.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation } from '../step.ts';
import { acReading } from '../tools/ac-volts.ts';
import { smallestDigitV } from '../tools/smallest-digit.ts';
import { cleanOffV, FRONT_PAIR, speakersOff } from './tones.ts';

/**
 * The top clean step over the full clean output: below the first an amplified profile, above the second a full one. The
 * step before the one that clips is up to a fifth lower, and a basic meter is off by 2 % and a digit. Common practice, no
 * published source.
 */
const LOWERED_RATIO = 0.65;

const FULL_RATIO = 0.75;

/** How far a reading may lie above what it is of. An estimate. */
const OFF_RATIO = 1.05;

/** How far two readings of one level may lie apart: 5 % and two digits. An estimate. */
const apartV = (volts: number, { facts }: Situation): number => 0.05 * volts + 2 * smallestDigitV(facts);

/** Readings of the head unit's pairs in other steps. The loudest clean step is at least that loud. */
const READ_BEFORE = {
  'tones-off': ['v400V', 'v80V'],
  'tones-running': ['v400V', 'v80V'],
  'rear-pair': ['frontV', 'leftV', 'rightV'],
} as const;

/** No more than a full output surely has: what was read beyond may have been clipped, or taken with the engine running. */
function loudestReadV(situation: Situation): number {
  const read = Object.entries(READ_BEFORE).flatMap(([step, names]) =>
    names.map((name) => numberIn(situation.facts[step], name, 'V') ?? 0),
  );
  return Math.min(FULL_RATIO * cleanOffV(situation).lowV, Math.max(0, ...read));
}

const topBands = (situation: Situation): readonly Band[] => {
  const { lowV, highV } = cleanOffV(situation);
  // What is known of this bike may put the two nearer to each other.
  const loweredMostV = Math.max(LOWERED_RATIO * lowV, OFF_RATIO * loweredV(situation.rig).high);
  const fullLeastV = Math.max(FULL_RATIO * lowV, loweredMostV);
  return [
    { label: 'lowered', low: 0, high: loweredMostV, mood: 'good' },
    { label: 'unclear', low: loweredMostV, high: fullLeastV, mood: 'unsure' },
    { label: 'full', low: fullLeastV, high: OFF_RATIO * highV, mood: 'good' },
    { label: 'clipped', low: OFF_RATIO * highV, high: 16, mood: 'unsure' },
  ];
};

/** The loudest clean step, found with 80 Hz: on an unaltered profile that tone reaches the limit 13 dB before the rest. */
export const topStep: ReadingStep<'full' | 'lowered' | 'unclear'> = measurement({
  place: 'profile',
  id: 'top-step',
  short: 'Loudest clean step',
  ask: 'Engine off, 80 Hz tone: what does the front pair read at the loudest clean step?',
  phone:
    'One probe on each wire of one front pair at the radio, never to metal. Play the 80 tone, come up one step at a time, and read me the volts. When a step adds less than the one before, go back one: what does it read there? Then volume straight down.',
  how: (s) => [
    ...speakersOff(s),
    ...(s.rig.amps?.length ? [] : ['No amplifier on the front? Bursts under 5 seconds, ears covered.']),
    'Phone volume full. Play the loud 80 Hz tone. Come up one step at a time and watch the volts.',
    'When the steps get smaller, go back one and read there. If the scale ends first, read at the end.',
    'Then turn the volume straight back down.',
  ],
  why: 'Full level reaches the supply’s limit. An amplified profile stops about 7 dB short of it, whatever the volume.',
  tool: 'meter',
  minutes: 5,
  conditions: ['controls-flat', 'amp-outputs-off', 'panel-off', 'tone-80', 'meter-on-ac'],
  sensible: (f) => !is(f, 'unit-kind', 'replaced'),
  observes: ['settings', 'profile', 'unit'],
  tones: ['80hz'],
  probes: FRONT_PAIR,
  readings: { topV: acReading('Front pair, loudest clean step') },
  unusable: ({ topV }, s) => {
    const readV = loudestReadV(s);
    if (topV === undefined || topV >= readV - apartV(readV, s)) return null;
    return {
      reading: 'topV',
      message: `You have read ${formatQuantity(readV, 'V', 2)} on this head unit before, so its loudest clean step cannot be less. Probes on the front pair, loud 80 Hz tone, phone volume full: come up once more.`,
    };
  },
  bands: (_, __, s) => topBands(s),
  judge: (values, s) => {
    const label = bandOf(topBands(s), values['topV'] ?? 0)?.label;
    return label === 'lowered' || label === 'full' ? label : 'unclear';
  },
  formula: 'loudest clean sine = (supply − what the output loses) ÷ √2, and 7 dB less if the level is lowered',
  healthy: (_, s) => {
    const full = topBands(s).find(({ label }) => label === 'full');
    const lowered = loweredV(s.rig);
    return `Full level is ${formatRange(full?.low ?? 0, full?.high ?? 0, 'V')} with the engine off. A lowered one ends at ${lowered.assumed ? formatRange(lowered.low, lowered.high, 'V') : `about ${formatQuantity(lowered.value, 'V', 2)}`}.`;
  },
  outcomes: { full: 'full level', lowered: 'level lowered', unclear: 'unclear' },
  article: 'why-amplified-without-an-amplifier-is-quieter',
  givenUnder: ['meter-digit'],
});
