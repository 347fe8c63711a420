import { lampA, lampSlopeS } from '../../compute/lamp.ts';
import type { Pair } from '../network.ts';
import type { Nonlinear } from '../nonlinear.ts';
import { straightLine } from './straight-line.ts';

export interface Filament {
  /** What it draws at the volts that it is rated for. */
  readonly ratedV: number;
  readonly ratedA: number;
}

/** A lamp as a load: the dimmer it is, the fewer ohms it has, whichever way round it hangs. */
export const filament = (id: string, between: Pair, made: Filament): Nonlinear => {
  const { ratedV, ratedA } = made;
  const rest = { id, kind: 'filament', positive: { ratedV, ratedA } };
  const line = (conductanceS: number, atZeroA: number) => straightLine(rest, between, { conductanceS, atZeroA });
  const currentA = (acrossV: number) => Math.sign(acrossV) * lampA({ ...made, lampV: Math.abs(acrossV) });
  return {
    id,
    between,
    first: line(ratedA / ratedV, 0),
    cornered: false,
    lineAt: (acrossV) => {
      const slopeS = lampSlopeS({ ...made, lampV: Math.abs(acrossV) });
      return line(slopeS, currentA(acrossV) - slopeS * acrossV);
    },
    currentA,
  };
};
