import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLimit, formatQuantity, formatRange, UNITS, type Unit } from '../../src/compute/quantity.ts';

const units = fc.constantFrom(...(Object.keys(UNITS) as Unit[]));

describe('formatQuantity', () => {
  it.each<[number, Unit, string]>([
    [8.485281374, 'V', '8.49 V'],
    [0.02, 'V', '0.02 V'],
    [0.31, 'V', '0.31 V'],
    [0.01, 'V', '0.01 V'],
    [0.0041, 'V', '4.1 mV'],
    [-0.0041, 'V', '-4.1 mV'],
    [18.0000001, 'W', '18 W'],
    [351.4, 'Hz', '351 Hz'],
    [4000, 'Hz', '4000 Hz'],
    [0.036, 'Ω', '36 mΩ'],
    [0.1, 'Ω', '0.1 Ω'],
    [47_000, 'Ω', '47 kΩ'],
    [2.2e6, 'Ω', '2.2 MΩ'],
    [0.028, 'A', '28 mA'],
    [2.2, 'm', '2.2 m'],
    [0.0052, 'm', '5.2 mm'],
    [8.3656, 'mm²', '8.37 mm²'],
    [12.3, 'dB', '12.3 dB'],
    [75, '%', '75 %'],
    [1, 'speaker', '1 speaker'],
    [12, 'speaker', '12 speakers'],
    [1, 'channel', '1 channel'],
    [4, 'channel', '4 channels'],
  ])('writes %d in %s as "%s"', (value, unit, text) => expect(formatQuantity(value, unit)).toBe(text));

  it('rounds halves away from zero as on paper, although 8.485 is stored just below its half', () => {
    expect(formatQuantity(8.485, 'V')).toBe('8.49 V');
    expect(formatQuantity(-8.485, 'V')).toBe('-8.49 V');
    expect(formatQuantity(1.005, 'V')).toBe('1.01 V');
  });
  it('chooses the prefix after rounding: 999.9 Ω is 1 kΩ and 9.999 mV is 0.01 V', () => {
    expect(formatQuantity(999.9, 'Ω')).toBe('1 kΩ');
    expect(formatQuantity(0.009999, 'V')).toBe('0.01 V');
  });
  it('keeps as many digits as asked', () => {
    expect(formatQuantity(8.485281, 'V', 2)).toBe('8.5 V');
    expect(formatQuantity(8.485281, 'V', 5)).toBe('8.4853 V');
  });
  it('has no negative zero', () => expect(formatQuantity(-0, 'V')).toBe('0 V'));
  it('never writes an exponent, however large or small', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e30, max: 1e30 }), units, (value, unit) => {
        expect(formatQuantity(value, unit)).toMatch(/^-?\d+(\.\d+)? \S+$/);
        expect(formatQuantity(value, unit)).not.toMatch(/^-0 /);
      }),
    );
  });
  it('refuses what is no number, and no digits at all', () => {
    expect(() => formatQuantity(Number.NaN, 'V')).toThrow(/^value must be finite, got NaN$/);
    expect(() => formatQuantity(Infinity, 'Ω')).toThrow(/^value must be finite, got Infinity$/);
    expect(() => formatQuantity(1, 'V', 0)).toThrow(/^significantDigits must be from 1 to 12, got 0$/);
  });
});

describe('formatRange', () => {
  it.each<[number, number, Unit, string]>([
    [0.7, 1.4, 'V', '0.70 to 1.4 V'],
    [13.8, 14.7, 'V', '13.8 to 14.7 V'],
    [5.68, 7.81, 'V', '5.7 to 7.8 V'],
    [9.5, 14, 'V', '9.5 to 14.0 V'],
    [2.8, 3.8, 'Ω', '2.8 to 3.8 Ω'],
    [15, 22, 'W', '15 to 22 W'],
    [0, 0.5, 'V', '0 to 0.50 V'],
    [-0.5, 0.5, 'V', '-0.50 to 0.50 V'],
    [0.001, 0.0045, 'V', '1.0 to 4.5 mV'],
    [500, 100_000, 'Ω', '0.50 to 100 kΩ'],
    [1, 12, 'speaker', '1 to 12 speakers'],
    [0, 0.03, 'V', '0 to 0.030 V'],
  ])('writes %d to %d in %s as "%s"', (low, high, unit, text) => expect(formatRange(low, high, unit)).toBe(text));

  it('goes finer on wish', () => {
    expect(formatRange(0.1149, 0.5, 'V', 3)).toBe('0.115 to 0.500 V');
    expect(formatRange(11.81, 12.2, 'V', 3)).toBe('11.81 to 12.20 V');
  });
  it.each<[number, Unit, string]>([
    [11.8, 'V', '11.8 V'],
    [0.7, 'V', '0.7 V'],
    [0.03, 'V', '0.03 V'],
    [15, 'V', '15 V'],
    [100_000, 'Ω', '100 kΩ'],
  ])('leaves one end as it stands in the band: %d in %s', (limit, unit, text) =>
    expect(formatLimit(limit, unit)).toBe(text),
  );

  it('never writes an exponent or a negative zero', () => {
    const ends = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(ends, ends, units, (a, b, unit) => {
        expect(formatRange(Math.min(a, b), Math.max(a, b), unit)).toMatch(
          /^(?!-0 )-?\d+(\.\d+)? to (?!-0 )-?\d+(\.\d+)? \S+$/,
        );
      }),
    );
  });
  it('refuses a band that is upside down or has no end', () => {
    expect(() => formatRange(2, 1, 'V')).toThrow(/^low must not be above high \(1\), got 2$/);
    expect(() => formatRange(0, Infinity, 'V')).toThrow(/^high must be finite, got Infinity$/);
  });
});
