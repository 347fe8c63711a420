import { CORNERS } from '../../rig/corner.ts';
import { isOpen } from '../bike.ts';
import { happens, option, type Say } from '../observer.ts';

/** How often water between pins is seen by whoever looks for it: it runs out as the plug is pulled. An estimate. */
const SEEN_SHARE = 0.85;

export const sayUnitPlugLook: Say = ({ bike, observer }) => {
  const { toGround } = bike.world.unit;
  const wet = CORNERS.some((corner) => toGround[corner].wants === 'cleaning' && !isOpen(toGround[corner]));
  return option(happens(observer, SEEN_SHARE) && wet ? 'wet' : 'dry');
};
