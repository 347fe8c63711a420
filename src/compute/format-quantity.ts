import { requireFinite, requireWhole } from './require.ts';
import { type AnyUnit, PREFIXES, type Prefix, rowOf, symbolOf, UNITS } from './units.ts';

/**
 * A value as people write it: `8.49 V`, `4.1 mV`, `18 W`, `47 kΩ`. Never an exponent, never `-0`.
 *
 * Halves round away from zero in decimal, as on paper: 8.485 gives 8.49, although the binary number lies just below it.
 * Zeros at the end are dropped. Only the prefixes that `UNITS` lists as written appear.
 * @throws {RangeError} if the value is not finite, or the digits are not a whole number from 1 to 12.
 */
export function formatQuantity(value: number, unit: AnyUnit, significantDigits = 3): string {
  requireFinite({ value });
  requireWhole({ significantDigits }, 1, 12);
  const digits = { maximumSignificantDigits: significantDigits };
  const rounded = Number(decimal(value, digits)); // before the prefix: 999.9 Ω is written 1 kΩ
  const prefix = writtenPrefix(rounded, unit);
  const number = decimal(rounded * 10 ** -PREFIXES[prefix], digits);
  return `${number} ${symbol(prefix, unit, number)}`;
}

/**
 * A band as people write it: `0.70 to 1.4 V`, `13.8 to 14.7 V`. Two digits that count, and one decimal below 100; both
 * ends whole need none. The two ends share one unit, that of the end farther from zero.
 *
 * @throws {RangeError} if an end is not finite, or the low one is above the high one.
 */
export function formatRange(low: number, high: number, unit: AnyUnit, significantDigits = 2): string {
  requireFinite({ low, high });
  if (low > high) throw new RangeError(`low must not be above high (${high}), got ${low}`);
  const [[from = '', to = ''], prefix] = endsOfBand([low, high], unit, significantDigits);
  return `${from} to ${to} ${symbol(prefix, unit, to)}`;
}

/**
 * The end of a band by itself, no finer than in the band, without zeros at its end: `0.7 V`, `11.8 V`.
 *
 * @throws {RangeError} if it is not finite.
 */
export function formatLimit(limit: number, unit: AnyUnit, significantDigits = 2): string {
  requireFinite({ limit });
  const [[end = ''], prefix] = endsOfBand([limit], unit, significantDigits);
  const text = end.includes('.') ? end.replace(/\.?0+$/, '') : end;
  return `${text} ${symbol(prefix, unit, text)}`;
}

function endsOfBand(ends: readonly number[], unit: AnyUnit, digits: number): readonly [readonly string[], Prefix] {
  const prefix = writtenPrefix(Math.max(...ends.map(Math.abs)), unit);
  const scaled = ends.map((end) => end * 10 ** -PREFIXES[prefix]);
  const whole = scaled.every((end) => Number.isInteger(Number(decimal(end, fraction(decimalsOf(end, digits))))));
  const texts = scaled.map((end) => decimal(end, fraction(whole ? 0 : decimalsOf(end, digits))));
  return [texts, prefix];
}

const fraction = (decimals: number) => ({ minimumFractionDigits: decimals, maximumFractionDigits: decimals });

function decimalsOf(value: number, digits: number): number {
  if (value === 0) return 0;
  const size = Math.floor(Math.log10(Math.abs(Number(value.toPrecision(digits)))));
  return size >= 2 ? digits - 2 : Math.min(20, Math.max(digits - 1, digits - 1 - size));
}

function writtenPrefix(value: number, unit: AnyUnit): Prefix {
  if (value === 0) return '';
  const [prefix] = rowOf(unit).written.find(([, from]) => Math.abs(value) >= from) ?? [''];
  return prefix;
}

function symbol(prefix: Prefix, unit: AnyUnit, number: string): string {
  if (unit !== 'speaker' && unit !== 'channel') return prefix + symbolOf(unit);
  return number === '1' ? UNITS[unit].singular : UNITS[unit].plural;
}

const formats = new Map<string, Intl.NumberFormat>();
/** Making a format takes far longer than using it, so each is made once. */
function formatOf(digits: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = JSON.stringify(digits);
  const format = formats.get(key) ?? new Intl.NumberFormat('en', { useGrouping: false, ...digits });
  formats.set(key, format);
  return format;
}

/** Twelve digits first: they hold every reading, and hide that 8.485 is stored as 8.48499… */
function decimal(value: number, digits: Intl.NumberFormatOptions): string {
  const exact = value.toPrecision(12) as Intl.StringNumericLiteral;
  const text = formatOf(digits).format(exact);
  return /[1-9]/.test(text) ? text : text.replace('-', '');
}
