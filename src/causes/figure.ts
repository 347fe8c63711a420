import { formatQuantity, formatRange, type Unit } from '../compute/quantity.ts';

/** One number of a remedy: what it is, its value or its band in the unit that it is typed in, and how far it counts. */
export interface Figure {
  readonly id: string;
  readonly label: string;
  readonly value: number | readonly [low: number, high: number];
  readonly unit: Unit;
  readonly limit?: 'above' | 'below' | 'at least' | 'at most';
  /** Digits that count: two for what was worked out, three for what was read. */
  readonly digits?: number;
}

/** A reading as a figure, where it was taken. */
export const voltsRead = (id: string, label: string, valueV: number | undefined): readonly Figure[] =>
  valueV === undefined ? [] : [{ id, label, value: valueV, unit: 'V', digits: 3 }];

const DIGITS = 2;

/** A figure as it is written everywhere: no finer than it is known. */
export function figureText({ value, unit, limit, digits = DIGITS }: Figure): string {
  const text = typeof value === 'number' ? formatQuantity(value, unit, digits) : formatRange(value[0], value[1], unit);
  return limit === undefined ? text : `${limit} ${text}`;
}
