import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between, drawFrom, happens, pick } from '../../src/observe/draw.ts';

const many = (draw: () => number, count: number) => Array.from({ length: count }, draw);

describe('drawFrom', () => {
  it('gives the same numbers for the same seeds, and others for others', () => {
    expect(many(drawFrom(1, 'bike', 7), 20)).toEqual(many(drawFrom(1, 'bike', 7), 20));
    expect(many(drawFrom(1, 'bike', 7), 20)).not.toEqual(many(drawFrom(1, 'bike', 8), 20));
    expect(many(drawFrom(1, 'bike', 7), 20)).not.toEqual(many(drawFrom(2, 'bike', 7), 20));
  });
  it('does not take two names for one: “ab”, “c” is not “a”, “bc”', () => {
    expect(drawFrom('ab', 'c')()).not.toBe(drawFrom('a', 'bc')());
  });
  it('stays from 0 up to 1, with a mean of a half and every tenth as often as the others', () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const drawn = many(drawFrom(seed), 4000);
        for (const value of drawn) expect(value >= 0 && value < 1).toBe(true);
        // Four standard deviations of the mean of 4000 even numbers, and of the count in one tenth.
        expect(Math.abs(drawn.reduce((sum, value) => sum + value, 0) / 4000 - 0.5)).toBeLessThan(
          4 * Math.sqrt(1 / 12 / 4000),
        );
        for (let tenth = 0; tenth < 10; tenth++) {
          const inIt = drawn.filter((value) => Math.floor(10 * value) === tenth).length;
          expect(Math.abs(inIt - 400)).toBeLessThan(5 * Math.sqrt(4000 * 0.1 * 0.9));
        }
      }),
      { numRuns: 30, seed: 1 },
    );
  });
});

describe('what is drawn', () => {
  it('is one of the list, and each of them in time', () => {
    const draw = drawFrom(3);
    expect(new Set(many(() => 0, 100).map(() => pick(draw, ['a', 'b', 'c'])))).toEqual(new Set(['a', 'b', 'c']));
    expect(() => pick(draw, [])).toThrow('from must not be empty');
  });
  it('lies between its limits, and happens never at 0 and always at 1', () => {
    const draw = drawFrom(4);
    for (let i = 0; i < 100; i++) {
      const value = between(draw, 2, 3);
      expect(value >= 2 && value < 3).toBe(true);
      expect(happens(draw, 0)).toBe(false);
      expect(happens(draw, 1)).toBe(true);
    }
  });
});
