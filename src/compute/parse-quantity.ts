import { formatQuantity } from './format-quantity.ts';
import { plainText } from './plain-text.ts';
import { powerOfTen, wrongUnit } from './typed-unit.ts';
import { type AnyUnit, rowOf } from './units.ts';

type Refusal = { ok: false; reason: 'empty' | 'not-a-number' | 'wrong-unit' | 'too-large'; message: string };

/** A value in the unit asked for, the meter's overload sign (an open circuit), or what is wrong with the text. */
export type ParsedQuantity = { ok: true; value: number; over?: false } | { ok: true; over: true } | Refusal;

/**
 * Reads what a person typed from a meter or a label.
 *
 * Digits of any script, point or comma for decimals, a prefix, the unit or none, AC or DC behind volts and amperes. The
 * value is in the unit asked for: volts for `310 mV`, square millimetres for `2.5 mm²`. Capitals matter only where both
 * m and M are prefixes of the unit, which is ohms. What could be read in two ways is refused, never guessed: marks
 * between thousands, and three digits after one comma. `OL` and what else meters show for it is an open circuit in
 * ohms; in volts and amperes it asks for a higher range.
 *
 * @param example what a message names as one, where that of the unit would not be allowed
 */
export function parseQuantity(text: string, unit: AnyUnit, example: string = rowOf(unit).example): ParsedQuantity {
  const plain = plainText(text);
  const { plural, largest } = rowOf(unit);
  if (plain === '') return refuse('empty', `Type a value in ${plural}, for example ${example}.`);
  const over = readOverload(plain, unit, example);
  if (over) return over;

  const [, sign = '', digits = '', exponent = '0', rest = ''] = NUMBER_THEN_REST.exec(plain) ?? [];
  const number = readDigits(digits.trim(), example);
  if (!number.ok) return number;
  if (/^[\d.,'+/-]/.test(rest)) return refuse('not-a-number', `Type one number only, for example ${example}.`);
  const other = rowOf(unit).others?.[rest.toLowerCase()];
  const power = other ? 0 : powerOfTen(rest, unit);
  if (power === undefined) return refuse('wrong-unit', wrongUnit(rest, unit, example));

  const value = Number(`${sign}${number.decimal}e${Number(exponent) + power}`) * (other ?? 1) + 0; // + 0 turns −0 into 0
  if (Math.abs(value) <= largest) return { ok: true, value };
  return refuse('too-large', tooLarge(unit, example));
}

/**
 * Whether this may be the overrange sign of an older meter on ohms: a 1 at the left of the display and nothing else. A
 * resistance of one ohm would show its decimals as well.
 */
export const isLoneOne = (text: string, unit: AnyUnit): boolean =>
  rowOf(unit).overload === 'open' && /^1 ?\.?$/.test(plainText(text));

/** A sign, digits with whatever stands between them, an exponent, and the rest, which should be a unit. */
const NUMBER_THEN_REST = /^([+-]?)\s*([\d.,'\s]*)(?:(?<=\d)e([+-]?\d{1,2}))?\s*(.*)$/i;
/** What meters show instead of a number that is too large, and what people call it. */
const OVERLOAD =
  /^[+-]?\s*(\.?[o0]\.?l\.?|∞|inf(?:inity|inite)?\.?|over(?:[ -]?(?:range|load|limit|flow))?|open(?: circuit)?)\s*(.*)$/i;
const GROUPED = /^\d{1,3}(?:[.,'\s]\d{3})+(?:[.,]\d+)?$/;

function readOverload(plain: string, unit: AnyUnit, example: string): ParsedQuantity | undefined {
  const { overload } = rowOf(unit);
  const [, sign, rest] = OVERLOAD.exec(plain) ?? [];
  if (overload === undefined || rest === undefined || powerOfTen(rest, unit) === undefined) return undefined;
  if (overload === 'open') return { ok: true, over: true };
  const message = `“${sign}” means more than this range can show. Choose a higher range and type what it shows, for example ${example}.`;
  return refuse('too-large', message);
}

function tooLarge(unit: AnyUnit, example: string): string {
  const { largest, overload } = rowOf(unit);
  const instead = overload === 'open' ? 'If the meter shows no number, type OL.' : `For example ${example}.`;
  return `Type at most ${formatQuantity(largest, unit)}. Is the point in the right place? ${instead}`;
}

function readDigits(digits: string, example: string): { ok: true; decimal: string } | Refusal {
  const [, whole = '', part = ''] = /^(\d*)(?:[.,](\d+))?$/.exec(digits) ?? [];
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) {
    const message = `“${digits}” can mean ${Number(`${whole}.${part}`)} or ${whole}${part}. Type the one you mean, without a comma.`;
    return refuse('not-a-number', message);
  }
  if (whole || part) return { ok: true, decimal: `${whole || '0'}.${part || '0'}` };
  if (GROUPED.test(digits)) {
    const message = `“${digits}” has a mark between thousands. Type only digits and one point or comma, for example 1000.5.`;
    return refuse('not-a-number', message);
  }
  return refuse('not-a-number', `Type a number with at most one point or comma, for example ${example}.`);
}

function refuse(reason: Refusal['reason'], message: string): Refusal {
  return { ok: false, reason, message };
}
