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

export const ALL_TONES = ['400hz', '80hz', '1khz', '4khz'] as const;

/** A tone goes through every amplifier on the bike, whichever pair is read. */
export const speakersOff = ({ rig }: Situation): readonly string[] =>
  rig.amps?.length === 0 ? [] : ['An amplifier on the bike: key off, speakers off the amplifier, key on.'];

export const FRONT_PAIR = { red: 'unit-front-plus', black: 'unit-front-minus' } as const;

export function badTones(values: Values, situation: Situation) {
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
