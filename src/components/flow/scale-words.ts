import { formatLimit, formatQuantity, formatRange, parseQuantity, type Unit } from '../../compute/quantity.ts';
import type { Band } from '../../steps/step.ts';

/** A scale in words. */
export interface ScaleWords {
  /** From where to where each band goes, in their order; the first and the last are open to their side. */
  readonly stretches: readonly string[];
  /** The reading as it is written beside them. */
  readonly written: string;
}

/** No finer than it has to be. A meter that shows more than four digits is in no rider's hand. */
const [FEWEST_DIGITS, MOST_DIGITS] = [2, 4] as const;

function numberOf(text: string, unit: Unit): number {
  const parsed = parseQuantity(text, unit);
  return parsed.ok && !parsed.over ? parsed.value : Number.NaN;
}

/** Whether the rounded limits stand apart from each other, and the rounded reading on its own side of each. */
function holds(limits: readonly number[], unit: Unit, value: number, written: string, digits: number): boolean {
  const rounded = limits.map((limit) => numberOf(formatLimit(limit, unit, digits), unit));
  const apart = rounded.every((limit, i) => i === 0 || limit > (rounded[i - 1] ?? 0));
  const read = value === Infinity ? Infinity : numberOf(written, unit);
  return apart && limits.every((limit, i) => value >= limit === read >= (rounded[i] ?? 0));
}

/**
 * Bands and a reading, rounded alike: neighbours never read the same, and a reading never seems to lie in another band
 * than it is said to.
 */
export function scaleInWords(bands: readonly Band[], unit: Unit, value: number | undefined): ScaleWords {
  const limits = bands.slice(1).map(({ low }) => low);
  const at = value ?? Infinity;
  const write = (digits: number) => (at === Infinity ? 'OL' : formatQuantity(at, unit, Math.max(3, digits)));
  let digits: number = FEWEST_DIGITS;
  while (digits < MOST_DIGITS && !holds(limits, unit, at, write(digits), digits)) digits++;
  const stretches = bands.map(({ low, high }, i) => {
    if (bands.length === 1) return '';
    if (i === 0) return `under ${formatLimit(high, unit, digits)}`;
    return i === bands.length - 1 ? `${formatLimit(low, unit, digits)} or more` : formatRange(low, high, unit, digits);
  });
  return { stretches, written: write(digits) };
}
