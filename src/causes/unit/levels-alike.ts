import { REAR_OVER_FRONT_LOWEST_RATIO } from '../../compute/signal-path.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { ProofOfCure } from '../cause.ts';
import type { Figure } from '../figure.ts';
import { isFront, isOfOneSpeaker, silentOne } from '../where.ts';
import { REAR_AS_LOUD_AS_FRONT, REAR_OVER_FRONT_HEALTHY, rearOverFrontRead } from './rear-over-front.ts';

/** What pairs read next to each other: the rear next to the front, or the two sides of one axle. */

const SIDES_HEALTHY: Figure = {
  id: 'sides-healthy',
  label: 'Weaker side over stronger side, healthy',
  value: 100 * REAR_OVER_FRONT_LOWEST_RATIO,
  unit: '%',
  limit: 'at least',
};

const PLACES = [
  ['unit-sides', 'at the head unit'],
  ['input-sides', 'into the amplifier'],
  ['output-sides', 'out of the amplifier'],
] as const;

/** Left and right of the silent axle, wherever they were read. */
function sidesRead(f: Findings): readonly Figure[] {
  const front = isFront(silentOne(f));
  return PLACES.flatMap(([step, place]): readonly Figure[] => {
    const { leftV, rightV } = f.values(front ? `${step}@front` : step);
    if (leftV === undefined || rightV === undefined || !(Math.max(leftV, rightV) > 0)) return [];
    const value = (100 * Math.min(leftV, rightV)) / Math.max(leftV, rightV);
    const label = `Weaker over stronger ${front ? 'front' : 'rear'} side ${place}, as read`;
    return [{ id: `${step}-read`, label, value, unit: '%' }];
  });
}

export const levelFigures = (f: Findings): readonly Figure[] =>
  isOfOneSpeaker(f) ? [...sidesRead(f), SIDES_HEALTHY] : [...rearOverFrontRead(f), REAR_OVER_FRONT_HEALTHY];

/** The check after a cure. */
export function asLoud(f: Findings): ProofOfCure {
  if (!isOfOneSpeaker(f)) return REAR_AS_LOUD_AS_FRONT;
  const front = isFront(silentOne(f));
  return {
    byEar: 'Left and right play equally loud, and still do after key off and on.',
    byMeter: `400 Hz tone, balance in the middle, at the head unit: the weaker ${front ? 'front' : 'rear'} side reads at least ${REAR_OVER_FRONT_LOWEST_RATIO} of the stronger one.`,
    needs: ['tone-400'],
    touches: [front ? 'unit-front-plus' : 'unit-rear-plus'],
  };
}
