import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { is } from '../outcome.ts';
import { type Band, measurement, type ReadingStep, type Situation } from '../step.ts';
import { bassRatio } from './bass-ratio.ts';
import {
  ALL_TONES,
  againAtV,
  BOOSTED_RATIO,
  badTones,
  FRONT_PAIR,
  referenceToneV,
  speakersOff,
  TONE_READINGS,
  whichTones,
} from './tones.ts';

/** 80 Hz over 400 Hz. Bands: common practice, no published source. */
const FLAT_RATIO = [0.7, 1.4] as const;

const CUT_RATIO = 0.6;

const bassBands = (at400V: number): readonly Band[] => [
  { label: 'cut', low: 0, high: CUT_RATIO * at400V, mood: 'unsure' },
  { label: 'unclear', low: CUT_RATIO * at400V, high: FLAT_RATIO[0] * at400V, mood: 'unsure' },
  { label: 'flat', low: FLAT_RATIO[0] * at400V, high: FLAT_RATIO[1] * at400V, mood: 'good' },
  { label: 'unclear', low: FLAT_RATIO[1] * at400V, high: BOOSTED_RATIO * at400V, mood: 'unsure' },
  { label: 'boosted', low: BOOSTED_RATIO * at400V, high: 6 * at400V, mood: 'good' },
];

/** A basic meter tells more of equal tones at a higher level. */
const equalTonesAgain = (s: Situation): readonly string[] => {
  const againV = againAtV(s);
  return againV === null
    ? []
    : [
        `Does 80 Hz read about the same as 400 Hz? Turn up until 400 Hz reads about ${formatQuantity(againV, 'V')}, with the loud tones if need be, and write down those readings.`,
      ];
};

/** Two tones at one volume step, engine off: boosted, flat, or cut by somebody's bass control. */
export const tonesOff: ReadingStep<'boosted' | 'flat' | 'cut' | 'unclear'> = measurement({
  place: 'profile',
  id: 'tones-off',
  short: 'Two tones, engine off',
  ask: 'Engine off: what does the front pair read with each tone?',
  phone: (s) =>
    `Engine off. One probe on each wire of one front pair at the radio, never to metal. Come up until the 400 tone reads about ${formatQuantity(referenceToneV(s), 'V', 2)}, then leave the volume alone: what number exactly? Now the 80 tone: what number?`,
  how: (s) => [
    ...speakersOff(s),
    'Phone equaliser off, phone volume full.',
    whichTones(s),
    `Play the 400 Hz tone. Probes across one front pair. Set the volume so that it reads about ${formatQuantity(referenceToneV(s), 'V', 2)}.`,
    'Do not touch the volume. Play the 80 Hz tone and read again. 1 kHz and 4 kHz if you have the time.',
    ...equalTonesAgain(s),
  ],
  why: 'The unaltered profile lifts the bass by 12 to 14 dB: 80 Hz reads four to five times 400 Hz. An amplified profile reads the same for both. At high volume clipping makes a boost look smaller, never larger.',
  tool: 'meter',
  minutes: 10,
  conditions: ['controls-flat', 'amp-outputs-off', 'panel-off', 'tone-400', 'meter-on-ac'],
  sensible: (f) => !is(f, 'unit-kind', 'replaced'),
  observes: ['settings', 'profile', 'unit'],
  tones: ALL_TONES,
  probes: FRONT_PAIR,
  readings: TONE_READINGS,
  unusable: badTones,
  bands: (reading, values) => (reading === 'v80V' && values['v400V'] !== undefined ? bassBands(values['v400V']) : null),
  judge: (values, s) => {
    const { ratio, lowRatio, highRatio } = bassRatio(values, s);
    if (ratio >= BOOSTED_RATIO && lowRatio > FLAT_RATIO[1]) return 'boosted';
    if (ratio >= FLAT_RATIO[0] && ratio < FLAT_RATIO[1] && highRatio < BOOSTED_RATIO) return 'flat';
    return ratio < CUT_RATIO && highRatio < FLAT_RATIO[1] ? 'cut' : 'unclear';
  },
  formula: '80 Hz ÷ 400 Hz = 10^(boost ÷ 20 dB): 1 when flat, 4 to 5 with 12 to 14 dB',
  healthy: (values) => {
    const at400V = values['v400V'];
    if (at400V === undefined) return 'Flat is 0.7 to 1.4 times the 400 Hz reading, boosted is 2.5 times or more.';
    return `Flat is ${formatRange(FLAT_RATIO[0] * at400V, FLAT_RATIO[1] * at400V, 'V')} at 80 Hz, boosted is above ${formatQuantity(BOOSTED_RATIO * at400V, 'V', 2)}.`;
  },
  outcomes: { boosted: 'bass boost in', flat: 'flat, bass boost out', cut: 'bass cut', unclear: 'unclear' },
  article: 'two-tones-one-ratio',
  givenUnder: ['meter-digit'],
});
