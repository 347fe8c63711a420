import { voltageRatio } from '../compute/decibel.ts';
import { combinedRatedOhm } from '../compute/impedance.ts';
import { BRIDGE_LOSS_LOADED_V, BRIDGE_LOSS_UNLOADED_V, cleanOutputV, FULL_STEP_V, powerW } from '../compute/level.ts';
import type { Axle } from './corner.ts';
import { type Estimate, estimate, type Rig } from './rig.ts';

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

/** The rated ohms on one channel of the head unit. */
export const loadOhmOf = (rig: Rig, axle: Axle): number =>
  axle === 'front' ? estimate(rig, 'frontRatedOhm').value : rearLoadOhm(rig);

/** The loudest clean output of one channel with the engine running. */
export function fullLevel(rig: Rig, axle: Axle): Level {
  const loadOhm = loadOhmOf(rig, axle);
  const levelV = cleanOutputV({ supplyV: estimate(rig, 'supplyRunningV').value, lossV: BRIDGE_LOSS_LOADED_V });
  return { levelV, powerW: powerW({ levelV, loadOhm }) };
}

/** The same into an amplifier's input, which draws next to nothing. */
export const unloadedFullV = (rig: Rig): number =>
  cleanOutputV({ supplyV: estimate(rig, 'supplyRunningV').value, lossV: BRIDGE_LOSS_UNLOADED_V });

/**
 * The loudest clean volts behind an amplified profile: so many decibels under the full step. The supply does not limit
 * them, and they are the same into a speaker and into an amplifier.
 */
export function loweredV(rig: Rig): Estimate {
  const { value, low, high, assumed } = estimate(rig, 'loweredByDb');
  const at = (downDb: number) => FULL_STEP_V * voltageRatio({ gainDb: -downDb });
  return { value: at(value), low: at(high), high: at(low), assumed };
}

/** What an amplified profile leaves on one channel, and the power that it is. */
export function lowered(rig: Rig, axle: Axle): Level {
  const levelV = loweredV(rig).value;
  return { levelV, powerW: powerW({ levelV, loadOhm: loadOhmOf(rig, axle) }) };
}
