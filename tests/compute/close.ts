import { expect } from 'vitest';

/** Two doubles that come from the same formula differ by rounding only: a part in 10⁹ is far above that. */
export const ROUNDING = 1e-9;

/**
 * Compares relatively, since our values run from milliohms to kilowatts. The tolerance is `ROUNDING`, or what the source
 * printed: half a step of its last digit over the value. Against 0 it is taken as it stands.
 */
export function expectClose(actual: number, expected: number, relative: number = ROUNDING): void {
  const allowed = expected === 0 ? relative : relative * Math.abs(expected);
  const off = Math.abs(actual - expected);
  expect(off <= allowed, `expected ${actual} within ${allowed} of ${expected}`).toBe(true);
}

/** Decibels are compared by difference: they are relative already. */
export function expectDb(actualDb: number, expectedDb: number, allowedDb: number): void {
  const offDb = Math.abs(actualDb - expectedDb);
  expect(offDb <= allowedDb, `expected ${actualDb} dB within ${allowedDb} dB of ${expectedDb} dB`).toBe(true);
}
