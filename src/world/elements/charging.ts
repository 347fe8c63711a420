import type { Pair } from '../network.ts';
import type { Nonlinear } from '../nonlinear.ts';
import { straightLine } from './straight-line.ts';

/** How far a regulator gives way from no load to full load, as ohms. From memory, no published source. */
export const REGULATOR_OHM = 5e-3;

interface Charging {
  /** What the regulator holds. */
  readonly setV: number;
  /** What the stator makes at this engine speed. */
  readonly limitA: number;
}

/**
 * A charging system: a regulator that holds its volts as long as the stator makes enough, and never takes current back.
 * I = −min(limit, max(0, (set − V) / R)), counted into its positive.
 *
 * Source: how a permanent-magnet charging system with a regulator behaves, from memory; the numbers are the rig's.
 */
export const charging = (id: string, between: Pair, { setV, limitA }: Charging): Nonlinear => {
  const rest = { id, kind: 'charging', positive: { setV }, notNegative: { limitA } };
  const idle = straightLine(rest, between, { conductanceS: 0, atZeroA: 0 });
  const limited = straightLine(rest, between, { conductanceS: 0, atZeroA: -limitA });
  const holds = straightLine(rest, between, { conductanceS: 1 / REGULATOR_OHM, atZeroA: -setV / REGULATOR_OHM });
  const wantedA = (acrossV: number) => (setV - acrossV) / REGULATOR_OHM;
  /** From low volts to high. */
  const pieces = [limited, holds, idle];
  const pieceAt = (acrossV: number) => (wantedA(acrossV) >= limitA ? 0 : wantedA(acrossV) <= 0 ? 2 : 1);
  return {
    id,
    between,
    first: holds,
    cornered: true,
    lineAt: (acrossV, now) => pieces[pieces.indexOf(now) + Math.sign(pieceAt(acrossV) - pieces.indexOf(now))] ?? holds,
    currentA: (acrossV) => -Math.min(limitA, Math.max(0, wantedA(acrossV))),
  };
};
