import { clearsRunning, engineMoves, isMoved, noiseComes, sagsAtIdle } from '../../world/symptoms/tone.ts';
import { unitFlat } from '../left.ts';
import { happens, option, type Say } from '../observer.ts';

/** How often a volume that follows the speed is noticed only on the road. An estimate. */
const SPEED_ON_THE_ROAD_SHARE = 0.8;
/** How often what changes at the stand is noticed only on the road. An estimate. */
const NOTICED_LATE_SHARE = 0.1;

const movesAtTheStand = (bike: Parameters<typeof engineMoves>[0]) =>
  engineMoves(bike).some(({ ratio }) => isMoved(ratio));

export const sayWhereChanges: Say = ({ bike, observer }) => {
  const [bySpeed, late] = [happens(observer, SPEED_ON_THE_ROAD_SHARE), happens(observer, NOTICED_LATE_SHARE)];
  if (noiseComes(bike) || clearsRunning(bike) || sagsAtIdle(bike)) return option(late ? 'road' : 'stand');
  if (!movesAtTheStand(bike)) return option('road');
  return option((movesAtTheStand(unitFlat(bike)) ? late : bySpeed) ? 'road' : 'stand');
};
