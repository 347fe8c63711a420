import { formatQuantity } from '../../compute/quantity.ts';
import type { Reading, Situation } from '../step.ts';
import { smallestDigitV } from './smallest-digit.ts';

/** Below this share of the front nothing is coming out. Common practice, no published source. */
const NOTHING_RATIO = 0.02;

/** AC volts across a pair of the head unit can reach the peak of a clipped wave on an average-reading meter, no more. */
export const UNIT_AC_POSSIBLE_V = [0, 16] as const;

export const acReading = (label: string, optional = false): Reading => ({
  label,
  unit: 'V',
  optional,
  possible: UNIT_AC_POSSIBLE_V,
  impossible:
    'A head unit on a 12 V bike cannot put that across one pair. Is the meter on AC volts, and on the right range?',
});

/** A little more than the least is asked for, so that a step of the volume is not left out for a digit. */
export const ASKED_RATIO = 1.2;

/** The least reference reading that lets this meter tell "nothing" from "a little". */
export function leastReferenceV(situation: Situation): number {
  const digitV = smallestDigitV(situation.facts);
  return digitV >= 0.1 ? 3 : digitV >= 0.01 ? 0.5 : 0.2;
}

/** Below this a reading counts as nothing: a fiftieth of the reference, plus the last digit that the meter may be off. */
export const nothingBelowV = (referenceV: number, situation: Situation): number =>
  NOTHING_RATIO * referenceV + smallestDigitV(situation.facts);

/** A refusal of readings taken with too little signal for this meter. */
export function tooLittle(reading: string, valueV: number | undefined, situation: Situation) {
  const leastV = leastReferenceV(situation);
  if (valueV === undefined || valueV >= leastV) return null;
  const digit = formatQuantity(smallestDigitV(situation.facts), 'V', 1);
  return {
    reading,
    message: `Too little for a meter that reads down to ${digit}. Turn the volume up until this reads ${formatQuantity(ASKED_RATIO * leastV, 'V', 2)} or more, then take all readings again.`,
  };
}
