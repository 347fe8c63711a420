import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  coilBandOhm,
  combinedRatedOhm,
  lowestImpedanceOhm,
  parallelOhm,
  runBandOhm,
  seriesOhm,
} from '../../src/compute/impedance.ts';
import { expectClose } from './close.ts';
import { evenly } from './evenly.ts';

const ohms = fc.double({ min: 0.1, max: 1000, noNaN: true });

describe('parallelOhm', () => {
  // Lessons In Electric Circuits, DC vol., "Simple parallel circuits": 10, 2 and 1 kΩ give 625 Ω (from memory).
  it('gives 625 Ω for 10, 2 and 1 kΩ side by side', () => expectClose(parallelOhm([10_000, 2000, 1000]), 625));
  it.each([
    [4, 4, 2],
    [4, 8, 8 / 3],
    [2, 4, 4 / 3],
    [6, 4, 2.4],
  ])('gives for %d and %d Ω side by side what product over sum gives', (a, b, both) => {
    expectClose(parallelOhm([a, b]), both);
  });
  it('is never above the smallest load', () => {
    fc.assert(
      fc.property(fc.array(ohms, { minLength: 1, maxLength: 6 }), (loads) => {
        expect(parallelOhm(loads)).toBeLessThanOrEqual(Math.min(...loads) * (1 + 1e-12));
      }),
    );
  });
  it('refuses an empty list and a short circuit in it', () => {
    expect(() => parallelOhm([])).toThrow(/^loadsOhm must name at least one load, got none$/);
    expect(() => parallelOhm([4, 0])).toThrow(/^loadOhm must be finite and above 0, got 0$/);
  });
});

describe('seriesOhm', () => {
  it('gives 8 Ω for two of 4 Ω and 6 Ω for 2 and 4 Ω', () => {
    expect(seriesOhm([4, 4])).toBe(8);
    expect(seriesOhm([2, 4])).toBe(6);
  });
  it('is never below the largest load', () => {
    fc.assert(
      fc.property(fc.array(ohms, { minLength: 1, maxLength: 6 }), (loads) => {
        expect(seriesOhm(loads)).toBeGreaterThanOrEqual(Math.max(...loads));
      }),
    );
  });
  it('refuses an open circuit in the row', () => {
    expect(() => seriesOhm([4, Infinity])).toThrow(/^loadOhm must be finite and above 0, got Infinity$/);
  });
});

describe('lowestImpedanceOhm', () => {
  // IEC 60268-5, 16.1: at least 80 % of the rated impedance.
  it.each([
    [2, 1.6],
    [4, 3.2],
    [6, 4.8],
    [8, 6.4],
    [16, 12.8],
  ])('lets a %d Ω speaker go down to %d Ω', (ratedOhm, lowest) => {
    expectClose(lowestImpedanceOhm({ ratedOhm }), lowest);
  });
  it('refuses a speaker of 0 Ω', () => {
    expect(() => lowestImpedanceOhm({ ratedOhm: 0 })).toThrow(/^ratedOhm must be finite and above 0, got 0$/);
  });
});

describe('coilBandOhm', () => {
  // Common practice, no published source: only the arithmetic and the order of things are checked here.
  it('gives 2.8 to 3.8 Ω for a 4 Ω speaker', () => {
    const { lowOhm, highOhm } = coilBandOhm({ ratedOhm: 4 });
    expectClose(lowOhm, 2.8);
    expectClose(highOhm, 3.8);
  });
  it('lies below the rated ohms and starts below the lowest impedance, since a coil adds to its DC resistance', () => {
    fc.assert(
      fc.property(ohms, (ratedOhm) => {
        expect(coilBandOhm({ ratedOhm }).highOhm).toBeLessThan(ratedOhm);
        expect(coilBandOhm({ ratedOhm }).lowOhm).toBeLessThan(lowestImpedanceOhm({ ratedOhm }));
      }),
    );
  });
  it('refuses a negative rating', () => {
    expect(() => coilBandOhm({ ratedOhm: -4 })).toThrow(/^ratedOhm must be finite and above 0, got -4$/);
  });
});

describe('combinedRatedOhm', () => {
  it('gives 2, 8 and 4 Ω for two of 4 Ω side by side, two in a row and one alone', () => {
    expect(combinedRatedOhm({ ratedOhm: 4, count: 2, wiring: 'parallel' })).toBe(2);
    expect(combinedRatedOhm({ ratedOhm: 4, count: 2, wiring: 'series' })).toBe(8);
    expect(combinedRatedOhm({ ratedOhm: 4, count: 1, wiring: 'single' })).toBe(4);
  });
  it('makes the row n² times the parallel group', () => {
    fc.assert(
      fc.property(ohms, fc.integer({ min: 1, max: 8 }), (ratedOhm, count) => {
        const row = combinedRatedOhm({ ratedOhm, count, wiring: 'series' });
        expectClose(row / combinedRatedOhm({ ratedOhm, count, wiring: 'parallel' }), count ** 2);
      }),
    );
  });
  it('refuses two that are single, none at all, and more than eight', () => {
    expect(() => combinedRatedOhm({ ratedOhm: 4, count: 2, wiring: 'single' })).toThrow(
      /^count must be from 1 to 1, got 2$/,
    );
    expect(() => combinedRatedOhm({ ratedOhm: 4, count: 0, wiring: 'series' })).toThrow(/^count must be from 1 to 8/);
    expect(() => combinedRatedOhm({ ratedOhm: 4, count: 9, wiring: 'series' })).toThrow(/^count must be from 1 to 8/);
    expect(() => combinedRatedOhm({ ratedOhm: 4, count: 1.5, wiring: 'series' })).toThrow(
      /^count must be a whole number, got 1.5$/,
    );
  });
});

describe('runBandOhm', () => {
  const run = { ratedOhm: 4, count: 1, wiring: 'single', wireLengthM: 2.2, wireSectionM2: 2.08e-6 } as const;
  it('adds 36 mΩ for 2.2 m of 2.08 mm² and back (worked by hand: 4.4 × 8.289 mΩ)', () => {
    expectClose(runBandOhm(run).lowOhm, 2.8 + 0.03647, 1e-5);
    expectClose(runBandOhm(run).highOhm, 3.8 + 0.03647, 1e-5);
  });
  it('calls 1.7 Ω healthy for two 4 Ω speakers side by side', () => {
    const { lowOhm, highOhm } = runBandOhm({ ...run, count: 2, wiring: 'parallel' });
    expect(lowOhm).toBeLessThan(1.7);
    expect(highOhm).toBeGreaterThan(1.7);
  });
  it('widens nothing with length: the wires move both ends alike', () => {
    fc.assert(
      fc.property(evenly(0, 20), (wireLengthM) => {
        const { lowOhm, highOhm } = runBandOhm({ ...run, wireLengthM });
        expectClose(highOhm - lowOhm, 1);
      }),
    );
  });
  it('refuses wire without section', () => {
    expect(() => runBandOhm({ ...run, wireSectionM2: 0 })).toThrow(/^sectionM2 must be finite and above 0, got 0$/);
  });
});
