import { describe, expect, it } from 'vitest';
import { quantile } from '../../src/tools/page-speed.ts';

describe('a quantile', () => {
  // The nearest-rank rule; the values and the results are the usual textbook ones, from memory.
  it('is the smallest value that so large a part of all does not exceed', () => {
    const values = [35, 20, 15, 50, 40];
    expect([0.05, 0.3, 0.4, 0.5, 1].map((part) => quantile(values, part))).toEqual([15, 20, 20, 35, 50]);
  });
  it('of nothing is refused in a sentence', () => {
    expect(() => quantile([], 0.5)).toThrow(/^values must not be empty$/);
  });
});
