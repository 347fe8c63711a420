import type { Ridden } from '../../world/symptoms/index.ts';
import { bestOf, ofConcern } from '../bike.ts';
import { type Asked, option } from '../observer.ts';

/** What is said of the rear after a control was moved, or was found where it belongs. */
export function curedBy({ found, bike }: Asked, after: Ridden) {
  const corners = ofConcern(found);
  const now = bestOf(after, corners);
  if (now === 'weak') return option('weak');
  if (now === 'silent') return option('no-change');
  return option(bestOf(bike, corners) === 'plays' ? 'plays' : 'cured');
}
