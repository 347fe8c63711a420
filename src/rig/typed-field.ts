import { plainText } from '../compute/plain-text.ts';
import { formatQuantity, formatRange, parseQuantity } from '../compute/quantity.ts';
import { awgSectionM2 } from '../compute/wire.ts';
import type { Field, NumberField } from './fields.ts';
import { whyRefused } from './validate.ts';

/** What stands in a form: text for a number, the option for a choice, nothing for "I don't know". */
export type Typed = Readonly<Record<string, string>>;
export type Fields = Readonly<Record<string, Field>>;

/** The value of a rig as it is typed: `2.08` for 2.08e-6 m². */
function textOf(field: Field, value: string | number): string {
  return field.kind === 'number' ? String(Number((Number(value) / field.siPerTyped).toPrecision(6))) : String(value);
}

/** The texts of the values that are there. */
export const typedFrom = (fields: Fields, values: Readonly<Record<string, unknown>>): Typed =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([id, field]) => {
      const value = values[id];
      return typeof value === 'string' || typeof value === 'number' ? [[id, textOf(field, value)]] : [];
    }),
  );

/** What a field's text means: a value, nothing known, or why it cannot be used. */
export type ReadField = { readonly value: string | number | undefined } | { readonly error: string };

export function readField(field: Field, text: string): ReadField {
  if (text.trim() === '') return { value: undefined };
  if (field.kind === 'choice') {
    const why = whyRefused(field, text);
    return why === null ? { value: text } : { error: why };
  }
  const gauge = field.unit === 'mm²' ? readGauge(text) : undefined;
  if (gauge && 'error' in gauge) return gauge;
  const parsed = gauge ? ({ ok: true, value: gauge.mm2 } as const) : parseQuantity(text, field.unit, exampleOf(field));
  if (!parsed.ok) {
    const outside = `That is outside ${allowedRange(field)}. Is the point in the right place?`;
    return { error: parsed.reason === 'too-large' ? outside : parsed.message };
  }
  if ('over' in parsed && parsed.over)
    return { error: 'An open circuit is no rating. Type the number that is printed on it.' };
  if (field.whole && !Number.isInteger(parsed.value)) return { error: `Type a whole number, ${allowedRange(field)}.` };
  const value = parsed.value * field.siPerTyped;
  if (whyRefused(field, value) === null) return { value };
  const typed = String(Number(parsed.value.toPrecision(4))).replace('-', '−');
  const slipped =
    !field.whole &&
    [10, 100, 1000].some((by) => whyRefused(field, value * by) === null || whyRefused(field, value / by) === null);
  return { error: `${typed} is outside ${allowedRange(field)}.${slipped ? ' Is the point in the right place?' : ''}` };
}

/** Leads are sold by gauge where millimetres are not usual: `8 AWG`, `AWG 8`, `2/0 ga`. */
const GAUGE = /^(?:(?:awg|gauge|ga\.?)\s*(\d\/0|\d{1,2})|(\d\/0|\d{1,2})\s*(?:awg|gauge|ga\.?))$/i;

/** The section of a gauge that was typed, with the three digits that tables print. */
function readGauge(text: string): { readonly mm2: number } | { readonly error: string } | undefined {
  const [, behind, before] = GAUGE.exec(plainText(text).trim()) ?? [];
  const printed = behind ?? before;
  if (printed === undefined) return undefined;
  const gauge = printed.endsWith('/0') ? 1 - Number(printed[0]) : Number(printed);
  if (gauge < -3 || gauge > 40) return { error: 'Gauges go from 4/0, the thickest, to 40.' };
  return { mm2: Number((awgSectionM2(gauge) / 1e-6).toPrecision(3)) };
}

/** A count needs no unit, and a number is not parted from its unit at the end of a line. */
const written = (text: string) => text.replace(/ (?:speakers?|channels?)?$/, '').replace(/ (?=[^\d ]+$)/, '\u00A0');

/** `12.0 to 15.5 V`: what the form accepts. */
export function allowedRange({ allowed, siPerTyped, unit }: NumberField): string {
  const [low, high] = [allowed[0] / siPerTyped, allowed[1] / siPerTyped];
  if (low > 0 && high / low >= WIDE)
    return `${written(formatQuantity(low, unit))} to ${written(formatQuantity(high, unit))}`;
  return written(formatRange(low, high, unit));
}
/** From here on the ends of a range are read more easily with a prefix each: `0.1 mV to 200 V`. */
const WIDE = 1e5;

/** A value that the field accepts, as it may be typed. */
const exampleOf = ({ typical, siPerTyped, unit }: NumberField): string =>
  written(formatQuantity(typical / siPerTyped, unit));

/** `14.2 V stands in (usual: 13.5 to 14.6 V)`: what is taken while nobody knows. */
export function standIn({ typical, usual, siPerTyped, unit }: NumberField): string {
  const range = formatRange(usual[0] / siPerTyped, usual[1] / siPerTyped, unit);
  return `${written(formatQuantity(typical / siPerTyped, unit))} stands in (usual: ${written(range)})`;
}
