import { CORNERS } from '../../rig/corner.ts';
import { happens, option, type Say } from '../observer.ts';

/** How often a pin that is pushed back is seen, or slides when its wire is pulled. An estimate. */
const SEEN_SHARE = 0.85;

export const sayUnitPins: Say = ({ bike, observer }) => {
  const { permanent, switched, ground, plug } = bike.world.unit;
  const contacts = [permanent, switched, ground, ...CORNERS.flatMap((corner) => Object.values(plug[corner]))];
  const back = contacts.some(({ wants }) => wants === 'pin' || wants === 'cleaning');
  return option(happens(observer, SEEN_SHARE) && back ? 'back' : 'level');
};
