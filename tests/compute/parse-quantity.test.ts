import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity, isLoneOne, parseQuantity, UNITS, type Unit } from '../../src/compute/quantity.ts';
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
    ['\u20130.2', -0.2, 'a dash for a negative'],
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

  it.each(['OL', 'ol', 'O.L', '0L', '0.L', '.OL', 'OL MΩ', '0.L kΩ', 'ＯＬ', '∞', '∞ Ω', 'inf', 'Inf.', 'infinite'])(
    'reads "%s" in ohms as an open circuit, which is what a meter means by it',
    (text) => expect(parseQuantity(text, 'Ω')).toEqual({ ok: true, over: true }),
  );
  it.each(['over', 'Over', 'OVER kΩ', 'over range', 'overload', 'over-limit', 'open', 'open circuit'])(
    'reads "%s" in ohms as an open circuit, which is what a meter means by it',
    (text) => expect(parseQuantity(text, 'Ω')).toEqual({ ok: true, over: true }),
  );
  it.each<[string, Unit]>([
    ['OL', 'V'],
    ['0L', 'A'],
    ['OL V', 'V'],
    ['-OL', 'V'],
    ['∞', 'V'],
    ['over', 'A'],
  ])('asks for a higher range when a meter shows "%s" in %s', (text, unit) => {
    expect(refused(text, unit)).toMatchObject({
      reason: 'too-large',
      message: expect.stringMatching(
        /^“(?:[O0]L|∞|over)” means more than this range can show\. Choose a higher range .*for example/,
      ),
    });
  });
  it('does not take OL for a length', () => expect(refused('OL', 'm').reason).toBe('not-a-number'));
  it('is not misled by a word that only begins like a sign of a meter', () => {
    for (const text of ['overboard', 'olive', 'infrared', 'opening', 'over 3'])
      expect(refused(text, 'Ω').reason).toBe('not-a-number');
  });
  it('questions ohms that few meters show, and says what to type when there is no number', () => {
    expect(parseQuantity('100 MΩ', 'Ω')).toEqual({ ok: true, value: 1e8 });
    for (const text of ['1e9', '101 MΩ', '1000 MΩ', '100000001'])
      expect(refused(text, 'Ω')).toEqual({
        ok: false,
        reason: 'too-large',
        message: 'Type at most 100 MΩ. Is the point in the right place? If the meter shows no number, type OL.',
      });
  });

  // Code points from the Unicode Standard's charts: Arabic, Devanagari, Halfwidth and Fullwidth Forms.
  it.each([
    ['\u0661\u0662\u066B\u0666', 12.6, 'Arabic-Indic digits and the Arabic decimal separator'],
    ['\u0663\u060C\u0661', 3.1, 'Arabic-Indic digits and the Arabic comma'],
    ['\u06F1\u06F2\u066B\u06F6 V', 12.6, 'the digits of Persian and Urdu'],
    ['\u200E\u2212\u06F0\u066B\u06F3', -0.3, 'a mark of direction and the real minus'],
    ['\u096B.\u0966\u096A', 5.04, 'Devanagari digits'],
    ['\uFF11\uFF12\uFF0E\uFF16\uFF36', 12.6, 'full-width digits, point and letter'],
    ['\uFF11\uFF12\uFF0C\uFF16\u3000\uFF56', 12.6, 'a full-width comma and an ideographic space'],
    ['\uFF0D\uFF10\uFF0E\uFF13', -0.3, 'a full-width negative'],
    ['\uFF0B\uFF13\uFF11\uFF10\uFF4D\uFF36', 0.31, 'full-width positive and prefix'],
  ])('reads "%s" as %d V: %s', (text, value) => expect(parseQuantity(text, 'V')).toEqual({ ok: true, value }));
  it('refuses the Arabic mark between thousands, as it does those of other scripts', () => {
    expect(refused('\u0661\u066C\u0660\u0660\u0660', 'Hz').message).toMatch(/^“1'000” has a mark between thousands\./);
  });
  it('reads no digit into what is raised, circled, a fraction or a Roman number: none is Numeric_Type=Decimal', () => {
    for (const text of ['3\u00B2', '\u2462', '3\u00BD', '\u2162', '\u2083']) expect(refused(text, 'V').ok).toBe(false);
  });
  it('reads every digit that Unicode has, as ICU writes it in each of its numbering systems', () => {
    // hanidec writes with ideographs, which are not decimal digits (UAX #44: general category Nd).
    const systems = Intl.supportedValuesOf('numberingSystem').filter((system) => system !== 'hanidec');
    expect(systems.length).toBeGreaterThan(50);
    const cents = fc.integer({ min: -99_999, max: 99_999 });
    fc.assert(
      fc.property(fc.constantFrom(...systems), cents, (numberingSystem, value) => {
        const text = new Intl.NumberFormat('en', { numberingSystem, useGrouping: false }).format(value / 100);
        expect(parseQuantity(text, 'V')).toEqual({ ok: true, value: value / 100 + 0 });
      }),
      { numRuns: 1000 },
    );
  });
  it('takes a 1 that stands alone for what may be the overrange sign, in ohms only', () => {
    // Common practice of meters with three and a half digits, no published source.
    for (const text of ['1', ' 1 ', '1.', '1 .', '\u0661', '\uFF11']) expect(isLoneOne(text, 'Ω')).toBe(true);
    for (const text of ['1.0', '1 Ω', '01', '-1', '11', '1k', '', 'OL']) expect(isLoneOne(text, 'Ω')).toBe(false);
    expect(isLoneOne('1', 'V')).toBe(false);
    expect(isLoneOne('1', 'm')).toBe(false);
  });

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
    const anything = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789.,-+ eEkMmVΩOL∞٣٫३．１') }));
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
