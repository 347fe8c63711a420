import { BRIDGE_LOSS_LOADED_V, BRIDGE_LOSS_UNLOADED_V, cleanOutputV } from '../compute/level.ts';
import { ratioBand } from '../compute/meter.ts';
import { formatQuantity, formatRange } from '../compute/quantity.ts';
import { estimate } from '../rig/rig.ts';
import { smallestDigitV } from './meter.ts';
import { valuesIn } from './outcome.ts';
import { acReading } from './rear-volts.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation, type Values } from './step.ts';

/**
 * What the head unit's stored profile does, read off the front pair with tones. Only ratios at the same volume step
 * count, and one meter on one range takes all readings of a ratio, so most of its error cancels.
 */

/** 80 Hz over 400 Hz. Bands: common practice, no published source; 12 to 14 dB of boost are ratios of 4.0 to 5.0. */
const FLAT_RATIO = [0.7, 1.4] as const;
const BOOSTED_RATIO = 2.5;
const CUT_RATIO = 0.6;
/** The same tone with the engine off and running: within this it is the same. Common practice, no published source. */
const SAME_RATIO = 1.2;
/** The top clean step over the full clean output: below the first an amplified profile, above the second a full one. */
const LOWERED_RATIO = 0.6;
const FULL_RATIO = 0.8;

/** The 400 Hz level to set before the others: low enough that a boost cannot clip, high enough for the meter. */
export const referenceToneV = (situation: Situation): number => (smallestDigitV(situation.facts) >= 0.1 ? 1.1 : 0.5);
/** Above this share of the clean output the boosted tone may be clipped already, and a boost hides. */
const limitRatio = (situation: Situation) => (smallestDigitV(situation.facts) >= 0.1 ? 0.8 : 0.5);

/** The loudest clean sine with the engine off: the least and the most that this bike can have. */
export function cleanOffV(situation: Situation): { readonly lowV: number; readonly highV: number } {
  const supply = estimate(situation.rig, 'supplyOffV');
  return {
    lowV: cleanOutputV({ supplyV: supply.low, lossV: BRIDGE_LOSS_LOADED_V }),
    highV: cleanOutputV({ supplyV: supply.high, lossV: BRIDGE_LOSS_UNLOADED_V }),
  };
}

const tone = (hertz: string, optional = false) => acReading(`${hertz} tone`, optional);
const TONE_READINGS = {
  v400V: tone('400 Hz'),
  v80V: tone('80 Hz'),
  v1000V: tone('1 kHz', true),
  v4000V: tone('4 kHz', true),
};
const ALL_TONES = ['400hz', '80hz', '1khz', '4khz'] as const;
/** A tone goes through every amplifier on the bike, whichever pair is read. */
const speakersOff = ({ rig }: Situation): readonly string[] =>
  rig.amps?.length === 0 ? [] : ['An amplifier on the bike: key off, speakers off the amplifier, key on.'];

const FRONT_PAIR = { red: 'unit-front-plus', black: 'unit-front-minus' } as const;

function badTones(values: Values, situation: Situation) {
  const [at400V, at80V] = [values['v400V'], values['v80V']];
  const wantedV = referenceToneV(situation);
  if (at400V !== undefined && at400V < 0.6 * wantedV) {
    return {
      reading: 'v400V',
      message: `Too little for this meter. Set the 400 Hz tone to about ${formatQuantity(wantedV, 'V', 2)} and take all tones again.`,
    };
  }
  const limitV = limitRatio(situation) * cleanOffV(situation).lowV;
  if (at80V !== undefined && at80V > limitV) {
    return {
      reading: 'v80V',
      message: `Too close to the head unit’s limit: above ${formatQuantity(limitV, 'V', 2)} clipping hides a boost. Turn down and take all tones again.`,
    };
  }
  return null;
}

const bassBands = (at400V: number): readonly Band[] => [
  { label: 'cut', low: 0, high: CUT_RATIO * at400V, mood: 'unsure' },
  { label: 'unclear', low: CUT_RATIO * at400V, high: FLAT_RATIO[0] * at400V, mood: 'unsure' },
  { label: 'flat', low: FLAT_RATIO[0] * at400V, high: FLAT_RATIO[1] * at400V, mood: 'good' },
  { label: 'unclear', low: FLAT_RATIO[1] * at400V, high: BOOSTED_RATIO * at400V, mood: 'unsure' },
  { label: 'boosted', low: BOOSTED_RATIO * at400V, high: 6 * at400V, mood: 'good' },
];

/** The ratio of 80 to 400 Hz with what the meter leaves possible on either side. */
export function bassRatio(values: Values, situation: Situation) {
  const [numeratorV, denominatorV] = [values['v80V'] ?? 0, values['v400V'] ?? 0];
  const smallestDigitV_ = smallestDigitV(situation.facts);
  return {
    ratio: numeratorV / denominatorV,
    ...ratioBand({ numeratorV, denominatorV, smallestDigitV: smallestDigitV_ }),
  };
}

/** Two tones at one volume step, engine off: boosted, flat, or cut by somebody's bass control. */
export const tonesOff: ReadingStep<'boosted' | 'flat' | 'cut' | 'unclear'> = measurement({
  id: 'tones-off',
  short: 'Two tones, engine off',
  ask: 'Engine off: what does the front pair read with each tone?',
  phone:
    'Engine off, bass and treble flat. Set the 400 tone to the level we say, then do not touch the volume. Now play the 80 tone. Read me both.',
  how: (s) => [
    ...speakersOff(s),
    'Bass and treble flat, loudness off, speed volume off, phone equaliser off, phone volume full.',
    `Play the 400 Hz tone. Probes across one front pair. Set the volume so that it reads about ${formatQuantity(referenceToneV(s), 'V', 2)}.`,
    'Do not touch the volume. Play the 80 Hz tone and read again. 1 kHz and 4 kHz if you have the time.',
  ],
  why: 'The unaltered profile lifts the bass by 12 to 14 dB: 80 Hz reads four to five times 400 Hz. An amplified profile reads the same for both. At high volume clipping hides it.',
  tool: 'meter',
  minutes: 10,
  observes: ['settings', 'profile', 'unit'],
  cautions: ['bridge', 'loud-tone', 'flat-battery'],
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
  healthy: (values) => {
    const at400V = values['v400V'];
    if (at400V === undefined) return 'Flat is 0.7 to 1.4 times the 400 Hz reading, boosted is 2.5 times and more.';
    return `Flat is ${formatRange(FLAT_RATIO[0] * at400V, FLAT_RATIO[1] * at400V, 'V')} at 80 Hz, boosted is above ${formatQuantity(BOOSTED_RATIO * at400V, 'V', 2)}.`;
  },
  outcomes: { boosted: 'bass boosted', flat: 'flat', cut: 'bass cut', unclear: 'unclear' },
  article: 'two-tones-one-ratio',
  givenUnder: ['meter-digit'],
});

const OTHER_TONES = ['v80V', 'v1000V', 'v4000V'] as const;

/** How much each tone, over 400 Hz, moves when the engine runs, with what the meter's last digit leaves possible. */
export function engineShifts(running: Values, situation: Situation) {
  const off = valuesIn(situation.facts[tonesOff.id], tonesOff as unknown as ReadingStep);
  const digitV = smallestDigitV(situation.facts);
  return OTHER_TONES.flatMap((name) => {
    const readings = [running[name], off['v400V'], running['v400V'], off[name]];
    if (!readings.every((valueV) => valueV !== undefined && valueV > digitV)) return [];
    const [up1 = 1, up2 = 1, down1 = 1, down2 = 1] = readings as number[];
    const shift = (up1 * up2) / (down1 * down2);
    const spread = readings.reduce<number>((worst, valueV) => worst * (1 + digitV / (valueV ?? 1)), 1);
    return [{ tone: name, shiftRatio: shift, lowRatio: shift / spread, highRatio: shift * spread }];
  });
}

/** The tones that were there in one of the two states of the engine and lost in the last digit in the other. */
function lostTones(running: Values, { facts }: Situation) {
  const off = valuesIn(facts[tonesOff.id], tonesOff as unknown as ReadingStep);
  const digitV = smallestDigitV(facts);
  return OTHER_TONES.filter((name) => {
    const [wasV, isV] = [off[name], running[name]];
    return wasV !== undefined && isV !== undefined && wasV > digitV !== isV > digitV;
  });
}

/** Where a tone stands with the engine running if nothing but the level moved; null without the readings for it. */
function sameBand(reading: string, values: Values, { facts }: Situation) {
  const off = valuesIn(facts[tonesOff.id], tonesOff as unknown as ReadingStep);
  const [was400V, wasV, at400V] = [off['v400V'], off[reading], values['v400V']];
  if (reading === 'v400V' || !was400V || !wasV || !at400V) return null;
  const sameV = (wasV / was400V) * at400V;
  return { lowV: sameV / SAME_RATIO, highV: sameV * SAME_RATIO };
}

/** The same tones with the engine idling. Ratios, because everything gets louder when the supply rises. */
export const tonesRunning: ReadingStep<'same' | 'changes' | 'unclear'> = measurement({
  id: 'tones-running',
  short: 'Two tones, engine running',
  ask: 'Engine idling outdoors, same volume: what does the front pair read with each tone now?',
  phone: 'Outside only. Engine on, same volume, same probes. The 400 tone: number? The 80 tone: number?',
  how: (s) => [
    ...speakersOff(s),
    'Outdoors, on the stand, in neutral. Start the engine and let it idle.',
    'Check that the volume step is the one from before: starting can reset it.',
    'Same front pair, same meter range. Read the same tones as before.',
  ],
  why: 'The unaltered profile changes its EQ when the engine starts. All tones rise a little with the supply, so only the ratio between them tells.',
  tool: 'meter',
  minutes: 10,
  observes: ['settings', 'profile', 'unit'],
  cautions: ['outdoors', 'bridge', 'loud-tone', 'hot'],
  tones: ALL_TONES,
  probes: FRONT_PAIR,
  readings: TONE_READINGS,
  unusable: badTones,
  bands: (reading, values, s) => {
    const same = sameBand(reading, values, s);
    return (
      same && [
        { label: 'less', low: 0, high: same.lowV, mood: 'unsure' },
        { label: 'the same', low: same.lowV, high: same.highV, mood: 'good' },
        { label: 'more', low: same.highV, high: 2 * same.highV, mood: 'unsure' },
      ]
    );
  },
  judge: (values, s) => {
    const shifts = engineShifts(values, s);
    if (shifts.length === 0) return 'unclear';
    const moved = ({ shiftRatio, lowRatio, highRatio }: (typeof shifts)[number]) =>
      (shiftRatio > SAME_RATIO && lowRatio > 1) || (shiftRatio < 1 / SAME_RATIO && highRatio < 1);
    if (shifts.some(moved)) return 'changes';
    if (lostTones(values, s).length > 0) return 'unclear';
    const same = shifts.every(
      ({ shiftRatio, lowRatio, highRatio }) =>
        shiftRatio <= SAME_RATIO && shiftRatio >= 1 / SAME_RATIO && lowRatio > 1 / 1.6 && highRatio < 1.6,
    );
    return same ? 'same' : 'unclear';
  },
  healthy: (values, s) => {
    const same = sameBand('v80V', values, s);
    const here = same ? `: ${formatRange(same.lowV, same.highV, 'V')} at 80 Hz` : '';
    return `The same means within 20 % of the ratio with the engine off${here}.`;
  },
  outcomes: { same: 'same as with the engine off', changes: 'changes when the engine runs', unclear: 'unclear' },
  article: 'two-tones-one-ratio',
  givenUnder: ['tones-off', 'meter-digit'],
});

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
export const topStep = measurement<'full' | 'lowered' | 'unclear'>({
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
  observes: ['settings', 'profile', 'unit'],
  cautions: ['full-tone', 'bridge', 'flat-battery'],
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
