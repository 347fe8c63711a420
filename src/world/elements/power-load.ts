import type { Pair } from '../network.ts';
import type { Nonlinear } from '../nonlinear.ts';
import { straightLine } from './straight-line.ts';

interface Load {
  /** What it takes whatever it plays. */
  readonly idleA: number;
  /** What it has to take in as power, so that less volts mean more amperes. */
  readonly powerW: number;
}

/**
 * An amplifier as its supply sees it: I = idle + P / V. The less the supply gives, the more it draws.
 *
 * Source: conservation of energy. Behind a source E with resistance R it has a point only up to P = E² / (4 R); with an
 * idle current the source has that much less to give.
 */
export const powerLoad = (id: string, between: Pair, { idleA, powerW }: Load): Nonlinear => {
  const rest = { id, kind: 'power-load', notNegative: { idleA, powerW } };
  const idle = straightLine(rest, between, { conductanceS: 0, atZeroA: idleA });
  /** The tangent at V: it falls by P / V² a volt, and meets 0 V at idle + 2 P / V. */
  const tangent = (acrossV: number) =>
    straightLine(rest, between, { conductanceS: -powerW / acrossV ** 2, atZeroA: idleA + (2 * powerW) / acrossV });
  const level = (acrossV: number) =>
    straightLine(rest, between, { conductanceS: 0, atZeroA: idleA + powerW / acrossV });
  return {
    id,
    between,
    first: idle,
    cornered: false,
    lineAt: (acrossV, _, meets) =>
      powerW === 0 ? idle : acrossV <= 0 ? null : meets === 'tangent' ? tangent(acrossV) : level(acrossV),
    currentA: (acrossV) => idleA + (powerW === 0 ? 0 : powerW / acrossV),
  };
};
