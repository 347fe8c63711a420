import { describe, expect, it } from 'vitest';
import { DAY, KM_PER_HOUR, MILLIAMPERE, MILLIMETRE, MINUTE, PLAIN, RPM } from '../../src/calculators/units.ts';
import { formatQuantity, parseQuantity } from '../../src/compute/quantity.ts';

describe('the units of the calculators', () => {
  // 1 mile is 1609.344 m and 1 inch is 25.4 mm, both exactly: the international yard and pound agreement of 1959.
  it.each([
    ['60 mph', KM_PER_HOUR, 96.56064],
    ['100', KM_PER_HOUR, 100],
    ['5.25 in', MILLIMETRE, 133.35],
    ['5,25"', MILLIMETRE, 133.35],
    ['13 cm', MILLIMETRE, 130],
    ['1.5 h', MINUTE, 90],
    ['3 weeks', DAY, 21],
    ['0,9 A', MILLIAMPERE, 900],
    ['15mA', MILLIAMPERE, 15],
    ['3000 r/min', RPM, 3000],
    ['8', PLAIN, 8],
  ] as const)('read "%s" in their own unit', (text, unit, value) => {
    const parsed = parseQuantity(text, unit);
    if (!parsed.ok || parsed.over) throw new Error(`${text} was not read`);
    expect(Math.abs(parsed.value - value)).toBeLessThan(1e-9 * value);
  });
  it('say what is wrong with one of another quantity', () => {
    const refused = parseQuantity('20 V', MILLIAMPERE);
    expect(refused.ok === false && refused.message).toBe(
      'You typed volts. This needs milliamperes: mA, or no unit, for example 15 mA.',
    );
  });
  it('are written behind their figures, and a plain number has none', () => {
    expect(formatQuantity(14.6, MILLIAMPERE)).toBe('14.6 mA');
    expect(formatQuantity(8, PLAIN).trim()).toBe('8');
  });
});
