import { powerRatio, voltageRatio } from '../compute/decibel.ts';
import { combinedRatedOhm } from '../compute/impedance.ts';
import { BRIDGE_LOSS_LOADED_V, BRIDGE_LOSS_UNLOADED_V, cleanOutputV, powerW } from '../compute/level.ts';
import type { Axle } from './corner.ts';
import { estimate, type Rig } from './rig.ts';

/** A level across one pair of the head unit, and the power that it is into the speaker. */
export interface Level {
  readonly levelV: number;
  readonly powerW: number;
}

/** The rated ohms on one rear channel. Several speakers whose wiring nobody said are side by side, the usual way. */
export function rearLoadOhm(rig: Rig): number {
  const count = Math.round(estimate(rig, 'rearPerChannel').value);
  const several = rig.rearWiring === 'series' ? 'series' : 'parallel';
  return combinedRatedOhm({
    ratedOhm: estimate(rig, 'rearRatedOhm').value,
    count,
    wiring: count === 1 ? 'single' : several,
  });
}

/** The loudest clean output of one channel with the engine running. */
export function fullLevel(rig: Rig, axle: Axle): Level {
  const loadOhm = axle === 'front' ? estimate(rig, 'frontRatedOhm').value : rearLoadOhm(rig);
  const levelV = cleanOutputV({ supplyV: estimate(rig, 'supplyRunningV').value, lossV: BRIDGE_LOSS_LOADED_V });
  return { levelV, powerW: powerW({ levelV, loadOhm }) };
}

/** The same into an amplifier's input, which draws next to nothing. */
export const unloadedFullV = (rig: Rig): number =>
  cleanOutputV({ supplyV: estimate(rig, 'supplyRunningV').value, lossV: BRIDGE_LOSS_UNLOADED_V });

/** What an amplified profile leaves of a level, and of the power that it is. */
export function lowered(rig: Rig, { levelV, powerW: fullW }: Level): Level {
  const gainDb = -estimate(rig, 'loweredByDb').value;
  return { levelV: levelV * voltageRatio({ gainDb }), powerW: fullW * powerRatio({ gainDb }) };
}
