import { REAR_OVER_FRONT_HIGHEST_RATIO, REAR_OVER_FRONT_LOWEST_RATIO } from '../../compute/signal-path.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { ProofOfCure } from '../cause.ts';
import type { Figure } from '../figure.ts';

/** The rear pairs of the head unit next to its front pair: what they read, what is healthy, and the check after a cure. */

const percent = (ratio: number): number => 100 * ratio;

export const REAR_OVER_FRONT_HEALTHY: Figure = {
  id: 'rear-over-front-healthy',
  label: 'Rear over front at the head unit, healthy',
  value: [percent(REAR_OVER_FRONT_LOWEST_RATIO), percent(REAR_OVER_FRONT_HIGHEST_RATIO)],
  unit: '%',
};

/** The readings, as far as there are any. */
export function rearOverFrontRead(f: Findings): readonly Figure[] {
  const { frontV, leftV, rightV } = f.values('rear-pair');
  if (frontV === undefined || leftV === undefined || rightV === undefined) return [];
  if (![leftV / frontV, rightV / frontV].every(Number.isFinite)) return [];
  return [
    { id: 'rear-left-over-front', label: 'Rear left over front, as read', value: percent(leftV / frontV), unit: '%' },
    {
      id: 'rear-right-over-front',
      label: 'Rear right over front, as read',
      value: percent(rightV / frontV),
      unit: '%',
    },
  ];
}

const HEALTHY_IN_WORDS = `${REAR_OVER_FRONT_LOWEST_RATIO} to ${REAR_OVER_FRONT_HIGHEST_RATIO}`;

export const REAR_AS_LOUD_AS_FRONT: ProofOfCure = {
  byEar: 'The rear plays as loud as the front, and still does after key off and on.',
  byMeter: `400 Hz tone, fader in the middle, at the head unit: each rear pair reads ${HEALTHY_IN_WORDS} of the front pair.`,
  needs: ['tone-400'],
  touches: ['unit-rear-plus'],
};
