import { real } from '../complex.ts';
import type { Element, Pair } from '../network.ts';
import { branch } from './source.ts';

/**
 * Rest volts of an absorbed-glass-mat battery of 12 V over its charge. Source: a public chart of such batteries prints
 * 12.9, 12.6, 12.3, 12.0 and under 11.8 V for 100, 75, 50, 25 and 0 %; other charts differ by up to 0.25 V.
 */
const REST_V = [11.8, 12.0, 12.3, 12.6, 12.9] as const;

/** Rest volts at a state of charge from 0 to 1, straight lines between the points of the chart. */
export function restV(chargeRatio: number): number {
  const at = Math.min(1, Math.max(0, chargeRatio)) * (REST_V.length - 1);
  const below = Math.min(Math.floor(at), REST_V.length - 2);
  const [low, high] = [REST_V[below] as number, REST_V[below + 1] as number];
  return low + (at - below) * (high - low);
}

/** A battery: its rest volts behind its inner resistance. To a tone it is that resistance alone. */
export const battery = (
  id: string,
  [plus, minus]: Pair,
  { openV, internalOhm }: { openV: number; internalOhm: number },
): Element =>
  branch({ id, kind: 'battery', positive: { openV, internalOhm } }, [plus, minus], (frequencyHz) => ({
    driveV: real(frequencyHz === 0 ? openV : 0),
    seriesOhm: real(internalOhm),
  }));
