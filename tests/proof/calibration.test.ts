import { describe, expect, it } from 'vitest';
import { elsewhere } from '../../machines/elsewhere.ts';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import {
  addBins,
  type Bins,
  binsOf,
  calibration,
  calibrationTable,
  leadOf,
  wilson,
} from '../../src/proof/calibration.ts';
import { merged, prove } from '../../src/proof/prove.ts';
import { loadStages } from '../../src/proof/stages.ts';

describe('the interval of a rate', () => {
  // R. G. Newcombe, "Two-sided confidence intervals for the single proportion", Statistics in Medicine 17 (1998), table I,
  // method 3, from memory.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('is for %i of %i from %f to %f', (hits, tries, low, high) => {
    const found = wilson(hits, tries);
    expect(found[0]).toBeCloseTo(low, 4);
    expect(found[1]).toBeCloseTo(high, 4);
  });
  it('holds the rate itself, mirrors it, and is everything while nothing was tried', () => {
    for (const tries of [1, 7, 50, 1000])
      for (const hits of [0, 1, Math.floor(tries / 2), tries]) {
        const [low, high] = wilson(hits, tries);
        expect(low).toBeLessThanOrEqual(hits / tries + 1e-12);
        expect(high).toBeGreaterThanOrEqual(hits / tries - 1e-12);
        expect(wilson(tries - hits, tries)[0]).toBeCloseTo(1 - high, 12);
      }
    expect(wilson(0, 0)).toEqual([0, 1]);
  });
});

describe('the lead at a verdict', () => {
  const shares = [
    { cause: 'unthought-odd', shareRatio: 0.5 },
    { cause: 'plug', shareRatio: 0.3 },
    { cause: elsewhere('other'), shareRatio: 0.2 },
  ];
  const other = { flow: 'other', title: 'Other', because: 'It is.', causes: ['fuse', 'ground'] };

  it('is that of the likeliest cause with a name, among those with a name', () => {
    expect(leadOf(shares, new Set(['plug']), [other])).toEqual({ shareRatio: 0.6, right: true });
    expect(leadOf(shares, new Set(['coil']), [other])).toEqual({ shareRatio: 0.6, right: false });
  });
  it('is right in the name of another flow if that looks for it', () => {
    const turned = shares.toReversed();
    expect(leadOf(turned, new Set(['ground']), [other])).toEqual({ shareRatio: 0.4, right: true });
    expect(leadOf(turned, new Set(['plug']), [other])).toEqual({ shareRatio: 0.4, right: false });
  });
  it('is nobody’s where nobody has a name', () => {
    expect(leadOf(shares.slice(0, 1), new Set(), [])).toBeUndefined();
  });
});

describe('the bins of shares', () => {
  const bins = binsOf([
    { shareRatio: 0.92, right: true },
    { shareRatio: 0.94, right: false },
    { shareRatio: 0.99, right: true },
  ]);
  it('count verdicts, those that were right, and what was said', () => {
    expect(bins).toEqual({ '0.9': [2, 1, expect.closeTo(1.86, 9)], '0.98': [1, 1, 0.99] });
  });
  it('add up, in any order', () => {
    expect(addBins(bins, {})).toEqual(bins);
    expect(addBins(bins, binsOf([{ shareRatio: 0.985, right: false }]))['0.98']).toEqual([
      2,
      1,
      expect.closeTo(1.975, 9),
    ]);
  });
  it('say whether what was said may be so, by chance', () => {
    const many = (right: number): Bins => ({ '0.9': [100, right, 93] });
    expect(calibration(many(93))[0]).toMatchObject({ saidRatio: 0.93, rightRatio: 0.93, within: true });
    expect(calibration(many(60))[0]).toMatchObject({ within: false });
    expect(calibrationTable(many(60)).split('\n')[1]).toMatch(/outside$/);
    expect(calibrationTable(many(93)).split('\n')[1]).toMatch(/93\.0 .*93\.0 .* to /);
  });
});

/*
 * What a verdict says of its share is held against bikes of other seeds than those of the tables. One bin in twenty lies
 * outside its interval by chance.
 */
describe('the shares that verdicts say', { timeout: 120_000 }, () => {
  it.each(FAULT_FLOWS)(
    'are what they are worth in %s, on bikes that the table maker never saw',
    async (flow, { complaints }) => {
      const stages = await loadStages();
      const bikes = Array.from({ length: 50 }, (_, i) => i);
      const result = merged([
        prove(
          { flow, complaints, seed: 77, faultsPerBike: 2, turns: 1, bikes, modes: ['exact', 'real', 'no-meter'] },
          stages,
        ),
      ]);
      const shown = calibration(
        Object.values(result)
          .map(({ bins }) => bins)
          .reduce(addBins),
      );
      const enough = shown.filter(({ verdicts }) => verdicts >= 10);
      expect(enough.length).toBeGreaterThan(1);
      expect(enough.filter(({ within }) => !within).length).toBeLessThanOrEqual(1);
      expect(shown.reduce((sum, { verdicts }) => sum + verdicts, 0)).toBeGreaterThan(100);
    },
  );
});
