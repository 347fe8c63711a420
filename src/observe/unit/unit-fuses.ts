import { isOpen } from '../bike.ts';
import { happens, option, type Say } from '../observer.ts';

/** How often the one that is burnt is found: it sits behind a panel, and a strip breaks where nobody sees it. An estimate. */
const FOUND_SHARE = 0.9;
/** How often a feed is lost at the blade of its fuse, and comes back when that is pulled and pushed home. An estimate. */
const AT_THE_BLADE_SHARE = 0.15;

export const sayUnitFuses: Say = ({ bike, observer }) => {
  const [found, atTheBlade] = [happens(observer, FOUND_SHARE), happens(observer, AT_THE_BLADE_SHARE)];
  const { fuseOpen, permanent, switched } = bike.world.unit;
  if (fuseOpen) return option(found ? 'burnt' : 'whole');
  return option(atTheBlade && (isOpen(permanent) || isOpen(switched)) ? 'back' : 'whole');
};
