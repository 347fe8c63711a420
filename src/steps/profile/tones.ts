import { BRIDGE_LOSS_LOADED_V, BRIDGE_LOSS_UNLOADED_V, cleanOutputV } from '../../compute/level.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { estimate } from '../../rig/rig.ts';
import type { Situation, Values } from '../step.ts';
import { acReading } from '../tools/ac-volts.ts';
import { smallestDigitV } from '../tools/smallest-digit.ts';

/**
 * What the head unit's stored profile does, read off the front pair with tones. Only ratios at the same volume step
 * count, and one meter on one range takes all readings of a ratio, so most of its error cancels.
 */

/** The 400 Hz level to set before the others: low enough that a boost cannot clip, high enough for the meter. */
export const referenceToneV = (situation: Situation): number => (smallestDigitV(situation.facts) >= 0.1 ? 1.1 : 0.5);

/**
 * The 400 Hz level at which equal tones are taken once more with a basic meter: its last digit is a thirtieth there, and
 * without a boost nothing clips. Null for a meter that has told enough at the first level.
 */
export const againAtV = (situation: Situation): number | null => (smallestDigitV(situation.facts) >= 0.1 ? 3 : null);

/** From this ratio on the bass is boosted, however much of it was clipped. 12 to 14 dB are ratios of 4.0 to 5.0. */
export const BOOSTED_RATIO = 2.5;

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

export const TONE_READINGS = {
  v400V: tone('400 Hz'),
  v80V: tone('80 Hz'),
  v1000V: tone('1 kHz', true),
  v4000V: tone('4 kHz', true),
};

/** The quiet ones for the ratio, the loud ones where a lowered output does not come up to the level with those. */
export const ALL_TONES = ['quiet-400hz', 'quiet-80hz', 'quiet-1khz', 'quiet-4khz', '400hz', '80hz'] as const;

/** Which of the tones to play. */
export const whichTones = (situation: Situation): string =>
  `Use the quiet tones first: with a bass boost the loud ones may clip at any volume. Does the quiet 400 Hz tone stay below ${formatQuantity(0.6 * referenceToneV(situation), 'V', 1)} at the last step? Then use the loud ones for both.`;

/** A tone goes through every amplifier on the bike, whichever pair is read. */
export const speakersOff = ({ rig }: Situation): readonly string[] =>
  rig.amps?.length === 0 ? [] : ['Amplifier on the bike? Key off, speakers off the amplifier, key on.'];

export const FRONT_PAIR = { red: 'unit-front-plus', black: 'unit-front-minus' } as const;

/** Above so many volts the 80 Hz tone may be clipped. */
export const limitV = (situation: Situation): number => limitRatio(situation) * cleanOffV(situation).lowV;

export function badTones(values: Values, situation: Situation) {
  const [at400V, at80V] = [values['v400V'], values['v80V']];
  const wantedV = referenceToneV(situation);
  if (at400V !== undefined && at400V < 0.6 * wantedV) {
    return {
      reading: 'v400V',
      message: `Too little for this meter. Set the 400 Hz tone to about ${formatQuantity(wantedV, 'V', 2)} and read all tones again.`,
    };
  }
  const mostV = limitV(situation);
  // Clipping only takes from the 80 Hz reading: a boost that shows all the same is one.
  const shows = at400V !== undefined && at80V !== undefined && at80V >= BOOSTED_RATIO * at400V;
  if (at80V !== undefined && at80V > mostV && !shows) {
    return {
      reading: 'v80V',
      message: `Too close to the head unit’s limit: above ${formatQuantity(mostV, 'V', 2)} clipping hides a boost. Turn it down and read all tones again.`,
    };
  }
  return null;
}
