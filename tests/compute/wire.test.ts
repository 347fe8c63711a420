import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { awgDiameterM, awgSectionM2, copperResistanceOhm, dropV, sectionForDropM2 } from '../../src/compute/wire.ts';
import { expectClose } from './close.ts';

const THOUSAND_FEET_M = 304.8;
const CIRCULAR_MIL_M2 = (Math.PI / 4) * 25.4e-6 ** 2;
const gauges = fc.integer({ min: -3, max: 38 });

describe('awgDiameterM', () => {
  // ASTM B258 fixes both ends: 0.46 in for 4/0 and 0.005 in for 36.
  it('gives 11.684 mm for 4/0 and 0.127 mm for 36 gauge', () => {
    expectClose(awgDiameterM(-3), 11.684e-3);
    expectClose(awgDiameterM(36), 0.127e-3);
  });
  it('shrinks by the same ratio, the 39th root of 92, from each gauge to the next', () => {
    fc.assert(
      fc.property(gauges, (gauge) => expectClose(awgDiameterM(gauge) / awgDiameterM(gauge + 1), 92 ** (1 / 39))),
    );
  });
  it('refuses half gauges and what lies beyond 4/0 and 40', () => {
    expect(() => awgDiameterM(8.5)).toThrow(/^gauge must be a whole number, got 8.5$/);
    expect(() => awgDiameterM(-4)).toThrow(/^gauge must be from -3 to 40, got -4$/);
    expect(() => awgDiameterM(41)).toThrow(/^gauge must be from -3 to 40, got 41$/);
    expect(awgDiameterM(40)).toBeLessThan(awgDiameterM(39));
  });
});

describe('awgSectionM2', () => {
  // Lessons In Electric Circuits, Reference vol. ch. 3, "Copper wire gage table", in circular mils, rounded there.
  it.each([
    ['4/0', -3, 211_600],
    ['2/0', -1, 133_100],
    ['1/0', 0, 105_500],
    ['14', 14, 4107],
  ])('gives the circular mils of the textbook table for %s gauge', (_, gauge, circularMils) => {
    expectClose(awgSectionM2(gauge), circularMils * CIRCULAR_MIL_M2, 5e-4);
  });
  it('gives 8.366 mm² for 8 gauge', () => expectClose(awgSectionM2(8), 8.3656e-6, 1e-5));
});

describe('copperResistanceOhm', () => {
  // NBS Circular 31 / Handbook 100, ohms for 1000 ft at 20 °C; 12 to 18 gauge from a public wire table of the same series.
  it.each([
    [-3, 0.04901],
    [-2, 0.0618],
    [-1, 0.07793],
    [0, 0.09827],
    [1, 0.1239],
    [12, 1.588],
    [14, 2.525],
    [16, 4.016],
    [18, 6.385],
  ])('gives the ohms of the wire tables for 1000 ft of gauge %i at 20 °C: %d Ω', (gauge, tableOhm) => {
    expectClose(copperResistanceOhm({ lengthM: THOUSAND_FEET_M, sectionM2: awgSectionM2(gauge) }), tableOhm, 5e-4);
  });
  // NEC chapter 9, table 8, solid uncoated copper at 75 °C, 1000 ft; printed to three digits.
  it.each([
    [14, 3.07],
    [12, 1.93],
    [10, 1.21],
    [8, 0.764],
  ])('gives the ohms of the building code for hot wire, gauge %i at 75 °C: %d Ω', (gauge, tableOhm) => {
    const hot = copperResistanceOhm({ lengthM: THOUSAND_FEET_M, sectionM2: awgSectionM2(gauge), temperatureC: 75 });
    expectClose(hot, tableOhm, 5e-3);
  });
  // IEC 60228, class 5, largest ohms for 1 km: a limit, and fine strands come near it.
  it.each([
    [1.5, 13.3],
    [2.5, 7.98],
    [6, 3.3],
    [16, 1.21],
  ])(
    'stays below the limit for soft cable of %d mm², %d Ω for 1 km, by the 8 to 16 hundredths its twist costs',
    (mm2, limitOhm) => {
      const solid = copperResistanceOhm({ lengthM: 1000, sectionM2: mm2 * 1e-6 });
      expect(limitOhm / solid).toBeGreaterThan(1.08);
      expect(limitOhm / solid).toBeLessThan(1.16);
    },
  );
  // Lessons In Electric Circuits, DC vol., "Specific resistance": 2300 ft of 14 gauge at 10.09 ohm·cmil/ft, 5.651 Ω.
  it('is 2.8 % above the textbook example, which takes purer copper: 10.09 against 10.371 ohm·cmil/ft', () => {
    const ours = copperResistanceOhm({ lengthM: 2.3 * THOUSAND_FEET_M, sectionM2: awgSectionM2(14) });
    expectClose(ours / 5.651, 10.371 / 10.09, 1e-4);
  });
  it('grows with length and shrinks with section, in proportion', () => {
    const times = fc.double({ min: 0.1, max: 10, noNaN: true });
    fc.assert(
      fc.property(times, times, (k, n) => {
        const one = copperResistanceOhm({ lengthM: 3, sectionM2: 5e-6 });
        expectClose(copperResistanceOhm({ lengthM: 3 * k, sectionM2: 5e-6 * n }), (one * k) / n);
      }),
    );
  });
  it('works from −50 to 200 °C and refuses what lies outside', () => {
    const wire = { lengthM: 1, sectionM2: 1e-6 };
    expect(copperResistanceOhm({ ...wire, temperatureC: -50 })).toBeGreaterThan(0);
    expect(copperResistanceOhm({ ...wire, temperatureC: 200 })).toBeGreaterThan(0);
    expect(() => copperResistanceOhm({ ...wire, temperatureC: 201 })).toThrow(
      /^temperatureC must be from -50 to 200, got 201$/,
    );
    expect(() => copperResistanceOhm({ ...wire, temperatureC: -51 })).toThrow(/^temperatureC must be from -50 to 200/);
  });
  it('gives 0 Ω for no length and refuses wire without section', () => {
    expect(copperResistanceOhm({ lengthM: 0, sectionM2: 1e-6 })).toBe(0);
    expect(() => copperResistanceOhm({ lengthM: 1, sectionM2: 0 })).toThrow(
      /^sectionM2 must be finite and above 0, got 0$/,
    );
  });
});

describe('dropV', () => {
  it('gives 0.393 V at 20 A through 3 m of 10 gauge and back (worked by hand: 20 × 6 × 3.277 mΩ)', () => {
    const resistanceOhm = copperResistanceOhm({ lengthM: 6, sectionM2: awgSectionM2(10) });
    expectClose(dropV({ currentA: 20, resistanceOhm }), 0.3932, 2e-4);
  });
  // Ohm's law, Lessons In Electric Circuits, DC vol.: 10 V at 2 A is 5 Ω.
  it('gives 10 V for 2 A through 5 Ω, and nothing without current', () => {
    expect(dropV({ currentA: 2, resistanceOhm: 5 })).toBe(10);
    expect(dropV({ currentA: 0, resistanceOhm: 5 })).toBe(0);
  });
  it('refuses current that flows backwards, since a drop has no sign here', () => {
    expect(() => dropV({ currentA: -1, resistanceOhm: 1 })).toThrow(
      /^currentA must be finite and not below 0, got -1$/,
    );
  });
});

describe('sectionForDropM2', () => {
  // Turned round from the drop of 8 gauge (ASTM B258), 4 m of copper (IEC 60028) at 40 A: 0.3298 V.
  it('gives 8 gauge for 0.3298 V over 4 m at 40 A', () => {
    expectClose(sectionForDropM2({ lengthM: 4, currentA: 40, lossV: 0.3298 }), awgSectionM2(8), 1e-3);
  });
  it('is the section whose resistance loses exactly that', () => {
    const positive = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(positive, positive, positive, (lengthM, currentA, lossV) => {
        const sectionM2 = sectionForDropM2({ lengthM, currentA, lossV });
        expectClose(dropV({ currentA, resistanceOhm: copperResistanceOhm({ lengthM, sectionM2 }) }), lossV);
      }),
    );
  });
  it('refuses to lose nothing', () => {
    expect(() => sectionForDropM2({ lengthM: 1, currentA: 1, lossV: 0 })).toThrow(/^lossV must be finite and above 0/);
  });
});
