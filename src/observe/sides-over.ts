import { axleOf, type Corner, type PerCorner, perCorner } from '../rig/corner.ts';
import { beside } from '../world/mirror.ts';
import type { Ridden } from '../world/symptoms/symptom.ts';
import { ampAt, bestOf, ofConcern } from './bike.ts';
import type { Asked } from './observer.ts';

/* Left and right of one axle in each other’s place. */

export const over = <T>(all: PerCorner<T>, of: Corner): PerCorner<T> =>
  perCorner((corner) => all[axleOf(corner) === axleOf(of) ? beside(corner) : corner]);

/** The silent corner and the amplifier that drives it; null where none does. */
export function cornerOnAmp({ found, bike }: Asked): readonly [Corner, number] | null {
  const [corner] = ofConcern(found);
  const at = corner === undefined ? null : ampAt(bike, corner);
  return corner === undefined || at === null ? null : [corner, at];
}

export const playsAt = (bike: Ridden, corner: Corner): boolean => bestOf(bike, [corner]) === 'plays';
