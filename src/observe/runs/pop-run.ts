import { type Axle, cornersOf } from '../../rig/corner.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { runClicks } from '../clicks.ts';
import { axleAsked, CANNOT, option, type Say } from '../observer.ts';
import { runOf } from '../ohms.ts';

/** A cone that gets less than half of what the cell gives a sound run only ticks. An estimate. */
const FAINT_RATIO = 2;

function clicksOf(bike: Ridden, axle: Axle): 'moves' | 'faint' | 'dead' {
  const corners = cornersOf(axle);
  if (!corners.every((corner) => runClicks(bike, corner))) return 'dead';
  const faint = corners.some(
    (corner) => (runOf(bike, corner) ?? Infinity) > FAINT_RATIO * (runOf(bike.healthy(), corner) ?? 0),
  );
  return faint ? 'faint' : 'moves';
}

export const sayPopRun: Say = (asked) => {
  const axle = axleAsked(asked);
  return axle === 'rear' && asked.bike.world.rig.rearFitted === 'no' ? CANNOT : option(clicksOf(asked.bike, axle));
};
