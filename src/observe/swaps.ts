import { axleOf, type Corner, cornersOf, type PerCorner, perCorner, sideOf } from '../rig/corner.ts';
import type { Ridden } from '../world/symptoms/symptom.ts';
import { rearAmp } from './bike.ts';

/** The corner on the same side of the other axle. */
export const opposite = (corner: Corner): Corner =>
  cornersOf(axleOf(corner) === 'front' ? 'rear' : 'front').find((other) => sideOf(other) === sideOf(corner)) ?? corner;

export const crossed = <T>(all: PerCorner<T>): PerCorner<T> => perCorner((corner) => all[opposite(corner)]);

/** The amplifier of the rear if it has front channels as well, or null: others have nothing to swap with. */
export function withFront(bike: Ridden): number | null {
  const i = rearAmp(bike);
  return i !== null && bike.world.rig.amps[i]?.drives === 'both' ? i : null;
}
