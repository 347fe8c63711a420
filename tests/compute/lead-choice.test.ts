import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ampCurrentA, DENSE_MUSIC_AVERAGE_RATIO } from '../../src/compute/amp-current.ts';
import { FUSE_RATINGS_A, LARGEST_FUSE_BY_GAUGE_A, largestFuseA } from '../../src/compute/fuse.ts';
import {
  fuseNeededA,
  type LeadChoice,
  PLUS_LEAD_MOST_V,
  plusLeadFor,
  SECTIONS_SOLD_M2,
  sectionForFuseM2,
} from '../../src/compute/lead-choice.ts';
import { AMP_FIELDS } from '../../src/rig/fields.ts';
import { expectClose, ROUNDING } from './close.ts';
import { evenly } from './evenly.ts';

const MM2 = 1e-6;
const soldMm2 = SECTIONS_SOLD_M2.map((sectionM2) => Number((sectionM2 / MM2).toPrecision(4)));

/** Ohms of a kilometre at 20 °C at the most, copper cable of class 5. Source: IEC 60228, table 3. */
const CLASS_5_OHM_PER_KM: Readonly<Record<number, number>> = {
  4: 4.95,
  6: 3.3,
  10: 1.91,
  16: 1.21,
  25: 0.78,
  35: 0.554,
};

describe('the sections that are sold', () => {
  // ASTM B258, as tables of gauges print it.
  it.each([0.823, 1.31, 2.08, 3.31, 5.26, 8.37, 13.3, 21.2, 33.6, 53.5])('have the gauge of %f mm²', (mm2) => {
    expect(soldMm2).toContain(mm2);
  });
  // IEC 60228, table 1.
  it.each([1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50])('have the metric %f mm²', (mm2) => expect(soldMm2).toContain(mm2));
  it('grow', () => expect(soldMm2).toEqual(soldMm2.toSorted((a, b) => a - b)));
});

describe('fuseNeededA', () => {
  it.each([
    [0.5, 1],
    [30, 30],
    [30.1, 35],
    [35.2, 40],
    [58.7, 60],
    [117, 125],
    [300, 300],
    [400, 300],
  ])('takes for %f A the fuse of %i A', (currentA, fuseA) => expect(fuseNeededA({ currentA })).toBe(fuseA));
  it('refuses no current', () => expect(() => fuseNeededA({ currentA: 0 })).toThrow(/^currentA must be finite/));
});

describe('sectionForFuseM2', () => {
  // 33 CFR 183.425, table 5, 60 °C: 8 gauge 55 A, 6 gauge 80 A, 4 gauge 105 A; the largest fuse stays under it.
  it.each([
    [20, 3.31],
    [30, 5.26],
    [35, 8.37],
    [40, 8.37],
    [50, 13.3],
    [70, 13.3],
    [80, 21.2],
    [125, 33.6],
  ])('gives for a fuse of %i A a lead of %f mm²', (fuseA, mm2) => {
    expect(sectionForFuseM2({ fuseA }) / MM2).toBeCloseTo(mm2, 6);
  });
  it('is the inverse of the table: each lead carries the fuse that asked for it, and a thinner gauge does not', () => {
    for (const fuseA of FUSE_RATINGS_A) {
      const sectionM2 = sectionForFuseM2({ fuseA });
      expect(largestFuseA({ sectionM2 })).toBeGreaterThanOrEqual(fuseA);
      const thinner = [...LARGEST_FUSE_BY_GAUGE_A.values()].filter((ratedA) => ratedA < largestFuseA({ sectionM2 }));
      expect(thinner.every((ratedA) => ratedA < fuseA)).toBe(true);
    }
  });
  it('refuses 400 A, for which the table has no lead', () => {
    expect(() => sectionForFuseM2({ fuseA: 400 })).toThrow(/^fuseA must be at most 300, got 400$/);
  });
});

/** Any amplifier that "my bike" takes, from one that hardly draws to one that no bike can feed. */
const allowed = (field: keyof typeof AMP_FIELDS & ('powerW' | 'plusLeadM' | 'plusLeadM2' | 'mainFuseA')) =>
  fc.oneof(evenly(...AMP_FIELDS[field].usual), evenly(...AMP_FIELDS[field].allowed));
const anyLead = fc
  .record({
    powerW: allowed('powerW'),
    channels: fc.constantFrom(2, 4),
    supplyV: evenly(12, 15.5),
    lengthM: allowed('plusLeadM'),
    fittedM2: allowed('plusLeadM2'),
    fittedFuseA: fc.oneof(fc.constant(undefined), fc.constantFrom(...FUSE_RATINGS_A), allowed('mainFuseA')),
  })
  .map(({ powerW, channels, supplyV, fittedFuseA, ...lead }) => ({
    ...lead,
    ...(fittedFuseA !== undefined && { fittedFuseA }),
    fullBassA: ampCurrentA({ powerW, channels, supplyV, efficiencyRatio: 0.72, averageRatio: 1 }),
  }));
const RUNS = { numRuns: 4000 };

describe('plusLeadFor', () => {
  const expectLead = (lead: LeadChoice, mm2: number, fuseA: number) => {
    expectClose(lead.sectionM2, mm2 * MM2);
    expect(lead.fuseA).toBe(fuseA);
  };

  it('keeps 8.37 mm² and 40 A for four channels of 90 W, and never says less of a lead that is there', () => {
    // 360 W / 0.72 / 14.2 V = 35.2 A: a 40 A fuse, which asks for 8 gauge; the drop alone would be content with 4.5 mm².
    const made = { lengthM: 1.6, fullBassA: 360 / 0.72 / 14.2, fittedFuseA: 40 };
    expectLead(plusLeadFor({ ...made, fittedM2: 8.37 * MM2 }), 8.37, 40);
    expectLead(plusLeadFor({ ...made, fittedM2: 3.31 * MM2 }), 8.37, 40);
    expectLead(plusLeadFor({ ...made, fittedM2: 13.3 * MM2 }), 13.3, 40);
    expectLead(plusLeadFor({ ...made, fittedM2: 13.3 / 1e6 }), 13.3, 40);
  });
  it('takes 13.3 mm² and 60 A for four channels of 150 W', () => {
    // 600 W / 0.72 / 14.2 V = 58.7 A.
    const lead = plusLeadFor({ lengthM: 1.6, fullBassA: 58.7, fittedM2: 8.37 * MM2, fittedFuseA: 40 });
    expectLead(lead, 13.3, 60);
  });
  it('takes a thicker one where it is long', () => {
    // 1.16 × 1.7241e-8 × 6 m × 35.2 A / 0.25 V = 16.9 mm²: 4 gauge is the next that is sold.
    const lead = plusLeadFor({ lengthM: 6, fullBassA: 35.2, fittedM2: 8.37 * MM2 });
    expectLead(lead, 21.2, 40);
  });
  it('keeps a fuse that fits both, and no other', () => {
    const lead = { lengthM: 2.4, fullBassA: 29.3, fittedM2: 13.3 * MM2 };
    expect(plusLeadFor({ ...lead, fittedFuseA: 60 }).fuseA).toBe(60);
    expect(plusLeadFor({ ...lead, fittedFuseA: 80 }).fuseA).toBe(30);
    expect(plusLeadFor({ ...lead, fittedFuseA: 20 }).fuseA).toBe(30);
    expect(plusLeadFor(lead).fuseA).toBe(30);
  });

  it('is never thinner than the lead that is there', () => {
    fc.assert(
      fc.property(anyLead, (lead) => {
        expect(plusLeadFor(lead).sectionM2).toBeGreaterThanOrEqual((1 - ROUNDING) * lead.fittedM2);
      }),
      RUNS,
    );
  });
  it('is sold', () => {
    fc.assert(
      fc.property(anyLead, (lead) => {
        expect(SECTIONS_SOLD_M2).toContain(plusLeadFor(lead).sectionM2);
      }),
      RUNS,
    );
  });
  it('has a fuse that it carries', () => {
    fc.assert(
      fc.property(anyLead, (lead) => {
        const { sectionM2, fuseA } = plusLeadFor(lead);
        expect(fuseA).toBeLessThanOrEqual(largestFuseA({ sectionM2 }));
      }),
      RUNS,
    );
  });
  it('has a fuse that full bass does not open, up to 300 A, and music nowhere', () => {
    fc.assert(
      fc.property(anyLead, (lead) => {
        const { fuseA } = plusLeadFor(lead);
        expect(fuseA).toBeGreaterThanOrEqual(Math.min(lead.fullBassA, 300));
        expect(fuseA).toBeGreaterThan(DENSE_MUSIC_AVERAGE_RATIO * lead.fullBassA);
      }),
      RUNS,
    );
  });
  it('loses no more than is allowed, by the ohms that the standard allows soft cable', () => {
    const metric = fc.constantFrom(...Object.keys(CLASS_5_OHM_PER_KM).map(Number));
    fc.assert(
      fc.property(anyLead, metric, (lead, mm2) => {
        const { sectionM2 } = plusLeadFor(lead);
        const ohmPerM = ((CLASS_5_OHM_PER_KM[mm2] ?? 0) / 1000) * (mm2 / (sectionM2 / MM2));
        expect(ohmPerM * lead.lengthM * lead.fullBassA).toBeLessThanOrEqual(PLUS_LEAD_MOST_V);
      }),
      RUNS,
    );
  });
  it('refuses a lead of no section, and one that nobody sells', () => {
    const lead = { lengthM: 1.6, fullBassA: 35, fittedM2: 8.37 * MM2 };
    expect(() => plusLeadFor({ ...lead, fittedM2: 0 })).toThrow(/^fittedM2 must be finite and above 0, got 0$/);
    expect(() => plusLeadFor({ ...lead, fittedFuseA: -1 })).toThrow(/^fittedFuseA must be finite and not below 0/);
    expect(() => plusLeadFor({ ...lead, lengthM: 200 })).toThrow(/^no lead of .* m² is sold$/);
  });
});
