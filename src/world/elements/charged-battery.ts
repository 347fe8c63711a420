import type { Pair } from '../network.ts';
import type { Nonlinear } from '../nonlinear.ts';
import { straightLine } from './straight-line.ts';

interface ChargedBattery {
  readonly openV: number;
  readonly internalOhm: number;
  /** Ohms that it shows to current that goes in: the fuller it is, the more. */
  readonly acceptOhm: number;
}

/**
 * A battery that gives and takes: out of it current meets the inner resistance, into it far more, since a full battery
 * takes little at the volts of the regulator. I = (V − open) / R, with the R of the direction.
 *
 * Source: how lead-acid batteries behave, from memory. Valid: minutes, not hours; its charge does not move.
 */
export const chargedBattery = (id: string, between: Pair, made: ChargedBattery): Nonlinear => {
  const { openV, internalOhm, acceptOhm } = made;
  const rest = { id, kind: 'battery', positive: { openV, internalOhm, acceptOhm } };
  const along = (ohm: number) => straightLine(rest, between, { conductanceS: 1 / ohm, atZeroA: -openV / ohm });
  const [gives, takes] = [along(internalOhm), along(acceptOhm)];
  return {
    id,
    between,
    first: gives,
    cornered: true,
    lineAt: (acrossV) => (acrossV < openV ? gives : takes),
    currentA: (acrossV) => (acrossV - openV) / (acrossV < openV ? internalOhm : acceptOhm),
  };
};
