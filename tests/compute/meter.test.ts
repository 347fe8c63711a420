import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acUncertaintyV, ratioBand } from '../../src/compute/meter.ts';
import { expectClose } from './close.ts';
import { evenly } from './evenly.ts';

// The statement of a basic meter is common practice, no published source: the arithmetic is worked by hand.
const volts = evenly(0, 20);
const digits = fc.constantFrom(0.0001, 0.001, 0.01, 0.1);

describe('acUncertaintyV', () => {
  it('gives 10.5 mV at 0.500 V on a range of millivolts: 7.5 mV and three digits', () => {
    expectClose(acUncertaintyV({ readingV: 0.5, smallestDigitV: 0.001 }), 0.0105);
  });
  it('gives 0.31 V at 0.5 V on a 200 V range, where the reading says hardly more than "something"', () => {
    expectClose(acUncertaintyV({ readingV: 0.5, smallestDigitV: 0.1 }), 0.3075);
  });
  it('never falls below three digits, even at a reading of 0', () => {
    fc.assert(
      fc.property(volts, digits, (readingV, smallestDigitV) => {
        expect(acUncertaintyV({ readingV, smallestDigitV })).toBeGreaterThanOrEqual(3 * smallestDigitV);
      }),
    );
    expectClose(acUncertaintyV({ readingV: 0, smallestDigitV: 0.1 }), 0.3);
  });
  it('refuses a meter without digits and a negative AC reading', () => {
    expect(() => acUncertaintyV({ readingV: 1, smallestDigitV: 0 })).toThrow(
      /^smallestDigitV must be finite and above 0, got 0$/,
    );
    expect(() => acUncertaintyV({ readingV: -1, smallestDigitV: 0.1 })).toThrow(
      /^readingV must be finite and not below 0, got -1$/,
    );
  });
});

describe('ratioBand', () => {
  it('gives 4.30 to 4.70 for 2.25 V over 0.50 V in millivolts (worked by hand)', () => {
    const { lowRatio, highRatio } = ratioBand({ numeratorV: 2.25, denominatorV: 0.5, smallestDigitV: 0.001 });
    expectClose(lowRatio, 2.21325 / 0.5105);
    expectClose(highRatio, 2.28675 / 0.4895);
  });
  it('holds the ratio of the readings, and of every pair of true values within the uncertainty', () => {
    const within = evenly(-1, 1);
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20, noNaN: true }),
        volts,
        within,
        within,
        (denominatorV, numeratorV, a, b) => {
          const smallestDigitV = 0.01;
          const { lowRatio, highRatio } = ratioBand({ numeratorV, denominatorV, smallestDigitV });
          const truth = (readingV: number, share: number) =>
            Math.max(0, readingV + share * acUncertaintyV({ readingV, smallestDigitV }));
          const ratio = truth(numeratorV, a) / truth(denominatorV, b);
          expect(ratio).toBeGreaterThanOrEqual(lowRatio * (1 - 1e-12));
          expect(ratio).toBeLessThanOrEqual(highRatio * (1 + 1e-12));
        },
      ),
    );
  });
  it('leaves every higher ratio possible when the lower reading may be zero, and never answers NaN', () => {
    expect(ratioBand({ numeratorV: 0.5, denominatorV: 0.3, smallestDigitV: 0.1 }).highRatio).toBe(Infinity);
    expect(ratioBand({ numeratorV: 0, denominatorV: 0, smallestDigitV: 0.1 })).toEqual({
      lowRatio: 0,
      highRatio: Infinity,
    });
    expect(ratioBand({ numeratorV: 0.5, denominatorV: 0.31, smallestDigitV: 0.1 }).highRatio).toBeLessThan(Infinity);
  });
  it('refuses a negative reading', () => {
    expect(() => ratioBand({ numeratorV: 1, denominatorV: -1, smallestDigitV: 0.1 })).toThrow(
      /^readingV must be finite and not below 0, got -1$/,
    );
  });
});
