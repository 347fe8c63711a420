import { formatQuantity } from '../compute/quantity.ts';
import type { AnyUnit } from '../compute/units.ts';
import { awgSectionM2 } from '../compute/wire.ts';

/** A figure with its unit, which is not parted from it at the end of a line. */
export const written = (value: number, unit: AnyUnit, digits = 2): string =>
  formatQuantity(value, unit, digits).replace(' ', '\u00a0');

const MINUTE_S = 60;
const HOUR_S = 60 * MINUTE_S;
const DAY_S = 24 * HOUR_S;

/** `5 s`, `38 min`, `2 h 30 min`, `11 days`: no finer than anybody plans. */
export function timeInWords(timeS: number): string {
  if (timeS < MINUTE_S) return `${Math.max(1, Math.round(timeS))}\u00a0s`;
  if (timeS < HOUR_S) return `${Math.round(timeS / MINUTE_S)}\u00a0min`;
  if (timeS < 2 * DAY_S) {
    const minutes = Math.round(timeS / (5 * MINUTE_S)) * 5;
    const [h, min] = [Math.floor(minutes / 60), minutes % 60];
    return h < 10 && min > 0 ? `${h}\u00a0h ${min}\u00a0min` : `${Math.round(timeS / HOUR_S)}\u00a0h`;
  }
  return `${Number((timeS / DAY_S).toPrecision(2))}\u00a0days`;
}

const GAUGES = [-3, -2, -1, 0, 1, 2, 4, 6, 8, 10, 12, 14, 16, 18];
const gaugeName = (gauge: number) => (gauge < 1 ? `${1 - gauge}/0` : String(gauge));

/** `8.4 mm² (8 AWG)`, and `10 mm²` where no gauge has that section. */
export function sectionInWords(sectionM2: number): string {
  const gauge = GAUGES.find((one) => Math.abs(awgSectionM2(one) / sectionM2 - 1) < 0.01);
  const section = written(sectionM2 / 1e-6, 'mm²', 3);
  return gauge === undefined ? section : `${section} (${gaugeName(gauge)}\u00a0AWG)`;
}

/** `+3.0 dB`, `−7.0 dB`, `0 dB`: a change in level says its sign. */
export function changeInWords(gainDb: number): string {
  const tenths = Math.round(gainDb * 10) / 10;
  return `${tenths > 0 ? '+' : tenths < 0 ? '−' : ''}${Math.abs(tenths)}\u00a0dB`;
}
