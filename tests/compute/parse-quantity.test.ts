import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity, parseQuantity, UNITS, type Unit } from '../../src/compute/quantity.ts';
import { evenly } from './evenly.ts';

const refused = (text: string, unit: Unit) => {
  const parsed = parseQuantity(text, unit);
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.over ? 'OL' : parsed.value}`);
  return parsed;
};

describe('parseQuantity', () => {
  it.each([
    ['3.1', 3.1],
    ['3,1', 3.1],
    ['3.1 V', 3.1],
    ['3.1V', 3.1],
    ['3.1 v', 3.1],
    ['3.1 volts', 3.1],
    ['310 mV', 0.31],
    ['310mV', 0.31],
    ['4.1 mV', 0.0041],
    ['3 millivolts', 0.003],
    ['-0.2', -0.2],
    ['+12.6', 12.6],
    ['.5', 0.5],
    [',5', 0.5],
    ['1e-3', 0.001],
    ['3.100', 3.1],
    ['0,310', 0.31],
    ['  12.6 V  ', 12.6],
  ])('reads "%s" as %d V', (text, value) => {
    expect(parseQuantity(text, 'V')).toEqual({ ok: true, value });
  });

  it.each(['3.1 V AC', '3.1 VAC', '3.1 V~', '3.1 V DC', '3.1VDC', '3.1 vdc', '3.1 AC', '3.1 V ⎓'])(
    'reads "%s" as 3.1 V, since meters print the kind of voltage beside it',
    (text) => expect(parseQuantity(text, 'V')).toEqual({ ok: true, value: 3.1 }),
  );

  it.each([
    ['\u22120.2', -0.2, 'the real minus sign'],
    ['\u20130.2', -0.2, 'a dash for a minus'],
    ['3.1\u00a0V', 3.1, 'a no-break space'],
    ['3.1\u202fV', 3.1, 'a narrow no-break space'],
  ])('reads "%s" as %d V: %s', (text, value) => {
    expect(parseQuantity(text, 'V')).toEqual({ ok: true, value });
  });

  it.each([
    ['3.4', 3.4],
    ['3.4 Ω', 3.4],
    ['3.4 \u2126', 3.4],
    ['3.4 ohm', 3.4],
    ['3.4 Ohms', 3.4],
    ['3.4 R', 3.4],
    ['4.7k', 4700],
    ['4.7 kΩ', 4700],
    ['4.7 KOHM', 4700],
    ['2 kilohms', 2000],
    ['36 mΩ', 0.036],
    ['1 M', 1e6],
    ['1 MΩ', 1e6],
    ['1 Mohm', 1e6],
    ['1 mohm', 0.001],
  ])('reads "%s" as %d Ω: a capital M is a million, a small m a thousandth', (text, value) => {
    expect(parseQuantity(text, 'Ω')).toEqual({ ok: true, value });
  });

  it.each<[string, Unit, number]>([
    ['28 mA', 'A', 0.028],
    ['850 µA', 'A', 0.00085],
    ['850 \u03bcA', 'A', 0.00085],
    ['2.5 amps', 'A', 2.5],
    ['18W', 'W', 18],
    ['4 khz', 'Hz', 4000],
    ['-7 db', 'dB', -7],
    ['220 cm', 'm', 2.2],
    ['2.2 meters', 'm', 2.2],
    ['2,5 mm2', 'mm²', 2.5],
    ['2.5 mm^2', 'mm²', 2.5],
    ['28 ah', 'Ah', 28],
    ['75%', '%', 75],
    ['12 speakers', 'speaker', 12],
  ])('reads "%s", asked for in %s, as %d', (text, unit, value) => {
    expect(parseQuantity(text, unit)).toEqual({ ok: true, value });
  });

  it.each(['OL', 'ol', 'O.L', '0L', '0.L', '.OL', 'OL MΩ', '0.L kΩ'])(
    'reads "%s" in ohms as an open circuit, which is what a meter means by it',
    (text) => expect(parseQuantity(text, 'Ω')).toEqual({ ok: true, over: true }),
  );
  it.each<[string, Unit]>([
    ['OL', 'V'],
    ['0L', 'A'],
    ['OL V', 'V'],
    ['-OL', 'V'],
  ])('asks for a higher range when a meter shows "%s" in %s', (text, unit) => {
    expect(refused(text, unit)).toMatchObject({
      reason: 'too-large',
      message: expect.stringMatching(/^OL means more than this range can show\. Choose a higher range .*for example/),
    });
  });
  it('does not take OL for a length', () => expect(refused('OL', 'm').reason).toBe('not-a-number'));

  it('refuses 3,100 rather than guess between 3.1 and 3100', () => {
    expect(refused('3,100', 'V')).toEqual({
      ok: false,
      reason: 'not-a-number',
      message: '“3,100” can mean 3.1 or 3100. Type the one you mean, without a comma.',
    });
  });
  it.each(['1,000', '12,600', '999,500', '-3,100', '3,100 Hz'])('refuses "%s" for the same reason', (text) => {
    expect(refused(text, 'Hz').message).toMatch(
      /^“[\d,]+” can mean [\d.]+ or \d+\. Type the one you mean, without a comma\.$/,
    );
  });
  it('reads three digits after a comma where nothing else can be meant', () => {
    expect(parseQuantity('0,310', 'V')).toEqual({ ok: true, value: 0.31 });
    expect(parseQuantity('1000,125', 'Hz')).toEqual({ ok: true, value: 1000.125 });
  });
  it.each(['1,000.5', '1.000,5', '1 000', '1\u202f000,5', "1'000", '1,000,000'])(
    'refuses "%s", and says that marks between thousands are not allowed',
    (text) => {
      const { reason, message } = refused(text, 'Hz');
      expect(reason).toBe('not-a-number');
      expect(message).toMatch(
        /has a mark between thousands\. Type only digits and one point or comma, for example 1000\.5\.$/,
      );
    },
  );
  it.each(['abc', 'about 3', '3.', '1 .', '3..1', '3 4', '3-4', '-', 'V', '1/2', '+-3', '--3'])(
    'refuses "%s", which is not one number, and gives an example',
    (text) =>
      expect(refused(text, 'V')).toMatchObject({
        reason: 'not-a-number',
        message: expect.stringMatching(/for example 3\.1 V\.$/),
      }),
  );
  it.each(['', '   ', '\u00a0'])('asks for a value when there is nothing in "%s"', (text) => {
    expect(refused(text, 'V')).toEqual({
      ok: false,
      reason: 'empty',
      message: 'Type a value in volts, for example 3.1 V.',
    });
  });
  it('says which unit was typed and which are allowed', () => {
    expect(refused('3.1 A', 'V')).toMatchObject({
      reason: 'wrong-unit',
      message: 'You typed amperes. This needs volts: V or mV, or no unit, for example 3.1 V.',
    });
    expect(refused('3 bananas', 'Ω')).toMatchObject({
      reason: 'wrong-unit',
      message: '“bananas” is not a unit known here. This needs ohms: Ω, mΩ, kΩ or MΩ, or no unit, for example 3.4 Ω.',
    });
  });
  it('takes 1000 V, and takes more for a slip of the finger', () => {
    expect(parseQuantity('1000', 'V')).toEqual({ ok: true, value: 1000 });
    expect(refused('1001', 'V')).toMatchObject({
      reason: 'too-large',
      message: expect.stringMatching(/^Type at most 1000 V\..*3\.1 V\.$/),
    });
    expect(refused('-1001', 'V').reason).toBe('too-large');
    expect(refused('1e99', 'V').reason).toBe('too-large');
  });
  it('has no negative zero', () => {
    expect(parseQuantity('-0', 'V')).toEqual({ ok: true, value: 0 });
    expect(parseQuantity('-0.0 mV', 'V')).toEqual({ ok: true, value: 0 });
  });

  const units = fc.constantFrom(...(Object.keys(UNITS) as Unit[]));
  it('answers any text whatever with a result, never with an error, and never with NaN', () => {
    const anything = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789.,-+ eEkMmVΩOL') }));
    fc.assert(
      fc.property(anything, units, (text, unit) => {
        const parsed = parseQuantity(text, unit);
        if (!parsed.ok) expect(parsed.message).toMatch(/\.$/);
        else if (!parsed.over) expect(Number.isFinite(parsed.value)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
  it('reads back what formatQuantity writes, to its three digits', () => {
    const sizes = evenly(-3, 2);
    fc.assert(
      fc.property(sizes, fc.constantFrom(1, -1), units, (size, sign, unit) => {
        const value = sign * 10 ** size;
        const parsed = parseQuantity(formatQuantity(value, unit), unit);
        if (!parsed.ok || parsed.over) throw new Error(`${formatQuantity(value, unit)} was not read`);
        expect(Math.abs(parsed.value / value - 1)).toBeLessThanOrEqual(0.00501);
      }),
    );
  });
  it('reads its own example in every unit', () => {
    for (const unit of Object.keys(UNITS) as Unit[]) {
      expect(parseQuantity(UNITS[unit].example, unit)).toMatchObject({ ok: true });
    }
  });
});
