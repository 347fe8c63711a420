import { CORNERS } from '../../rig/corner.ts';
import { coilsOhm } from '../hear.ts';
import type { World } from '../state.ts';
import { driverOf } from '../valued-rig.ts';

/** Coils of less than this share of its rated ohms make an amplifier hot on a warm ride. Common practice, no published source. */
const HEATS_RATIO = 0.4;

/** Whether the speakers on some channel of an amplifier are so few ohms that it gets hot over them. */
export const isOverloaded = (world: World, amp: number): boolean =>
  CORNERS.some(
    (corner) =>
      driverOf(world.rig, corner) === amp &&
      coilsOhm(world, corner) < HEATS_RATIO * (world.rig.amps[amp]?.ratedOhm ?? 0),
  );
