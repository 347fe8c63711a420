import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AMP_FIELDS, BIKE_FIELDS } from '../../src/rig/fields.ts';
import { readField } from '../../src/rig/typed-field.ts';

describe('readField', () => {
  it('reads a wire’s section in mm² and keeps it in m²', () => {
    expect(readField(BIKE_FIELDS.rearRunM2, '2.5 mm2')).toEqual({ value: expect.closeTo(2.5e-6, 12) });
  });
  it('reads a comma as people type it', () => {
    expect(readField(BIKE_FIELDS.supplyRunningV, '14,2')).toEqual({ value: 14.2 });
  });
  it.each([
    [BIKE_FIELDS.supplyRunningV, '12', { value: 12 }],
    [BIKE_FIELDS.supplyRunningV, '15.5', { value: 15.5 }],
    [BIKE_FIELDS.supplyRunningV, '11.9', { error: '11.9 is outside 12.0 to 15.5\u00A0V.' }],
    [BIKE_FIELDS.supplyRunningV, '-13', { error: '−13 is outside 12.0 to 15.5\u00A0V.' }],
    [
      BIKE_FIELDS.supplyRunningV,
      '1.42',
      { error: '1.42 is outside 12.0 to 15.5\u00A0V. Is the point in the right place?' },
    ],
    [
      BIKE_FIELDS.supplyRunningV,
      'about 14',
      { error: 'Type a number with at most one point or comma, for example 14.2\u00A0V.' },
    ],
    [
      BIKE_FIELDS.rearPerChannel,
      '2 kg',
      { error: '“kg” is not a unit known here. Type the number alone, for example 1.' },
    ],
    [BIKE_FIELDS.batteryAh, '3000', { error: 'That is outside 4 to 100\u00A0Ah. Is the point in the right place?' }],
    [
      BIKE_FIELDS.frontRatedOhm,
      'OL',
      { error: 'An open circuit is no rating. Type the number that is printed on it.' },
    ],
    [BIKE_FIELDS.rearPerChannel, '1.5', { error: 'Type a whole number, 1 to 4.' }],
    [BIKE_FIELDS.rearPerChannel, '9', { error: '9 is outside 1 to 4.' }],
    [BIKE_FIELDS.rearFitted, 'yes', { value: 'yes' }],
    [AMP_FIELDS.powerW, '', { value: undefined }],
  ])('$label takes “%s” as %j', (field, text, result) => {
    expect(readField(field, text)).toEqual(result);
  });
  it('answers any text at all without breaking', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.values(BIKE_FIELDS), ...Object.values(AMP_FIELDS)),
        fc.string(),
        (field, text) => {
          const result = readField(field, text);
          if ('error' in result) expect(result.error).toMatch(/[.?]$/);
        },
      ),
    );
  });
});

describe('a gauge in place of a section', () => {
  // ASTM B258: 8 AWG has 8.366 mm², 10 has 5.261, 1/0 has 53.48 and 4/0 has 107.2; printed with three digits.
  it.each([
    ['8 AWG', 8.37e-6],
    ['awg 10', 5.26e-6],
    ['10ga', 5.26e-6],
    ['1/0 AWG', 53.5e-6],
  ])('reads "%s" as a section', (text, sectionM2) => {
    expect(readField(AMP_FIELDS.plusLeadM2, text)).toEqual({ value: expect.closeTo(sectionM2, 12) });
  });
  it('refuses one that does not exist', () => {
    expect(readField(AMP_FIELDS.plusLeadM2, '55 AWG')).toEqual({ error: 'Gauges go from 4/0, the thickest, to 40.' });
  });
});
