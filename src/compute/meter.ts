import { requireNotNegative, requirePositive } from './require.ts';

/** What a reader's meter can tell apart on the AC range in use: 0.1 V on a 200 V range, 0.001 V on a 2 V range. */
export type MeterAc = { smallestDigitV: number };

/** A basic meter's usual AC statement, 1.5 % of reading + 3 digits. Common practice, no published source: from memory. */
export const AC_OF_READING_RATIO = 0.015;
export const AC_DIGITS = 3;

/**
 * How far an AC reading of a basic meter may be off, to either side: 1.5 % of reading + 3 of its smallest digits.
 *
 * Source: common practice, no published source. Valid: a sine inside the meter's band (often 40 to 400 Hz). Outside it
 * the reading is low by more than this says; on anything but a sine an average-reading meter is wrong by more.
 * @throws {RangeError} if the reading is negative, the digit is not above 0, or either is not finite.
 */
export function acUncertaintyV({ readingV, smallestDigitV }: MeterAc & { readingV: number }): number {
  requireNotNegative({ readingV });
  requirePositive({ smallestDigitV });
  return AC_OF_READING_RATIO * readingV + AC_DIGITS * smallestDigitV;
}

type Pair = MeterAc & { numeratorV: number; denominatorV: number };

/**
 * The ratios that two readings leave possible: from (n − u) / (d + u) to (n + u) / (d − u), each with its own u.
 *
 * Source: interval arithmetic on `acUncertaintyV`. Valid: worst case, as if both readings erred in opposite directions;
 * with one meter on one range the share in per cent cancels, so the truth lies well inside. When the lower reading may
 * be zero, no ratio is too high: `highRatio` is then Infinity, and the reading says nothing against any ratio above.
 * @throws {RangeError} if a reading is negative, the digit is not above 0, or any is not finite.
 */
export function ratioBand({ numeratorV, denominatorV, smallestDigitV }: Pair): { lowRatio: number; highRatio: number } {
  const upperV = acUncertaintyV({ readingV: numeratorV, smallestDigitV });
  const lowerV = acUncertaintyV({ readingV: denominatorV, smallestDigitV });
  const leastV = denominatorV - lowerV;
  return {
    lowRatio: Math.max(0, numeratorV - upperV) / (denominatorV + lowerV),
    highRatio: leastV > 0 ? (numeratorV + upperV) / leastV : Infinity,
  };
}
