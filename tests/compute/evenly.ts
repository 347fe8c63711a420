import fc from 'fast-check';

/**
 * Numbers spread evenly from `low` to `high`, both ends included. A plain `fc.double` spreads evenly over all numbers a
 * computer can write, and nearly all of those below 1 are next to nothing: a property over decibels then sees only 0 dB.
 */
export function evenly(low: number, high: number): fc.Arbitrary<number> {
  const steps = 10_000;
  return fc.integer({ min: 0, max: steps }).map((step) => low + ((high - low) * step) / steps);
}
