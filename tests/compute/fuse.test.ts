import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FUSE_RATINGS_A, LARGEST_FUSE_BY_GAUGE_A, largestFuseA } from '../../src/compute/fuse.ts';
import { awgSectionM2 } from '../../src/compute/wire.ts';

/** 33 CFR 183.425, table 5: allowable amperes by gauge, for insulation of 60 °C and of 105 °C. */
const ALLOWABLE_A = [
  { gauge: -3, at60: 300, at105: 445 },
  { gauge: -2, at60: 260, at105: 385 },
  { gauge: -1, at60: 225, at105: 330 },
  { gauge: 0, at60: 195, at105: 285 },
  { gauge: 1, at60: 165, at105: 245 },
  { gauge: 2, at60: 140, at105: 210 },
  { gauge: 4, at60: 105, at105: 160 },
  { gauge: 6, at60: 80, at105: 120 },
  { gauge: 8, at60: 55, at105: 80 },
  { gauge: 10, at60: 40, at105: 60 },
  { gauge: 12, at60: 25, at105: 45 },
  { gauge: 14, at60: 20, at105: 35 },
  { gauge: 16, at60: 15, at105: 25 },
  { gauge: 18, at60: 10, at105: 20 },
];

describe('LARGEST_FUSE_BY_GAUGE_A', () => {
  it.each(ALLOWABLE_A)('keeps gauge $gauge within the $at60 A of the poorest insulation', ({ gauge, at60 }) => {
    expect(LARGEST_FUSE_BY_GAUGE_A.get(gauge)).toBeLessThanOrEqual(at60);
  });
  it.each(ALLOWABLE_A)('stays within 150 % of $at105 A, the limit of 33 CFR 183.455, for gauge $gauge', (row) => {
    expect(LARGEST_FUSE_BY_GAUGE_A.get(row.gauge)).toBeLessThanOrEqual(1.5 * row.at105);
  });
  it('still fits each lead in an engine space, where table 5 takes 15 % off 105 °C insulation', () => {
    for (const { gauge, at105 } of ALLOWABLE_A) {
      expect(LARGEST_FUSE_BY_GAUGE_A.get(gauge)).toBeLessThanOrEqual(0.85 * at105);
    }
  });
  it('names only fuses that are sold', () => {
    for (const fuseA of LARGEST_FUSE_BY_GAUGE_A.values()) expect(FUSE_RATINGS_A).toContain(fuseA);
  });
  it('has a row of the table for each gauge', () => {
    expect([...LARGEST_FUSE_BY_GAUGE_A.keys()]).toEqual(ALLOWABLE_A.map(({ gauge }) => gauge));
  });
});

describe('largestFuseA', () => {
  it.each([
    [120, 300],
    [70, 225],
    [50, 150],
    [35, 125],
    [25, 100],
    [16, 70],
    [10, 40],
    [6, 30],
    [4, 20],
    [2.5, 15],
    [1.5, 10],
    [1, 5],
  ])('treats a metric lead of %d mm² as the next thinner gauge: %d A', (mm2, fuseA) => {
    expect(largestFuseA({ sectionM2: mm2 * 1e-6 })).toBe(fuseA);
  });
  it.each([
    [21.1, 100],
    [13.3, 70],
    [8.37, 40],
    [5.26, 30],
    [3.31, 20],
    [2.08, 15],
    [1.31, 10],
    [0.823, 5],
  ])('takes %d mm², a gauge as tables round it, for the gauge: %d A', (mm2, fuseA) => {
    expect(largestFuseA({ sectionM2: mm2 * 1e-6 })).toBe(fuseA);
  });
  it('ends at 300 A however thick the lead', () => expect(largestFuseA({ sectionM2: 400e-6 })).toBe(300));
  it('never allows a thicker lead less', () => {
    const sections = fc.double({ min: awgSectionM2(18), max: 120e-6, noNaN: true });
    fc.assert(
      fc.property(sections, sections, (a, b) => {
        const [thin, thick] = [Math.min(a, b), Math.max(a, b)];
        expect(largestFuseA({ sectionM2: thick })).toBeGreaterThanOrEqual(largestFuseA({ sectionM2: thin }));
      }),
    );
  });
  it('refuses 0.75 mm², thinner than 18 gauge, for which it knows no fuse', () => {
    expect(() => largestFuseA({ sectionM2: 0.75e-6 })).toThrow(
      /^sectionM2 must be at least 18 gauge \(8.23e-7\), got 7.5e-7$/,
    );
  });
});
