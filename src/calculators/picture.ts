import type { Unit } from '../compute/quantity.ts';

/** What a picture is made of, apart from how it is drawn. */
export type Picture = Plot | Joined;

export interface Axis {
  readonly label: string;
  readonly low: number;
  readonly high: number;
  /** By decades instead of evenly. */
  readonly log?: true;
}
export interface Curve {
  readonly name: string;
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly dashed?: true;
}
/** A level that something must stay below, or reach. */
export interface Limit {
  readonly name: string;
  readonly y: number;
}
/** Where this bike stands. */
export interface Mark {
  readonly name: string;
  readonly x: number;
  readonly y: number;
}
export interface Plot {
  readonly kind: 'plot';
  readonly x: Axis;
  readonly y: Axis;
  readonly curves: readonly Curve[];
  readonly limits?: readonly Limit[];
  readonly marks?: readonly Mark[];
}

/** Speakers on one channel, as they are joined. */
export interface Joined {
  readonly kind: 'joined';
  readonly count: number;
  readonly wiring: 'single' | 'parallel' | 'series';
  readonly each: { readonly value: number; readonly unit: Unit };
}

/** Points of a curve, evenly over an axis, or by decades where it has them. */
export function traced(axis: Axis, y: (x: number) => number, steps = 48): Curve['points'] {
  const at = (share: number) =>
    axis.log ? axis.low * (axis.high / axis.low) ** share : axis.low + (axis.high - axis.low) * share;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const x = at(i / steps);
    return [x, y(x)] as const;
  });
}

/** A round number at or above a value: 1, 2, 2.5 or 5 times a power of ten. */
export function roundUp(value: number): number {
  if (!(value > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  return ([1, 2, 2.5, 5, 10].find((one) => one * power >= value * (1 - 1e-9)) ?? 10) * power;
}

/** Round numbers along an axis, four to eight of them; on one by decades 1, 2 and 5 of each, or the decades alone. */
export function ticksOf({ low, high, log }: Axis): readonly number[] {
  if (log) {
    const first = Math.floor(Math.log10(low));
    const last = Math.ceil(Math.log10(high));
    const decades = Array.from({ length: last - first + 1 }, (_, i) => 10 ** (first + i));
    const each = last - first > 3 ? [1] : [1, 2, 5];
    return decades
      .flatMap((decade) => each.map((one) => Number((one * decade).toPrecision(3))))
      .filter((tick) => tick >= low * (1 - 1e-9) && tick <= high * (1 + 1e-9));
  }
  const step = roundUp((high - low) / 6);
  const from = Math.ceil(low / step - 1e-9);
  const to = Math.floor(high / step + 1e-9);
  return Array.from({ length: to - from + 1 }, (_, i) => Number(((from + i) * step).toPrecision(12)));
}
