import { happens, option, type Say } from '../observer.ts';

/** How often the open one that looks whole is among those that are swapped: some sit where nobody finds them. An estimate. */
const SWAPPED_SHARE = 0.8;

export const sayUnitFuseSwap: Say = ({ bike, observer }) => {
  const swapped = happens(observer, SWAPPED_SHARE);
  return option(swapped && bike.world.unit.fuseOpen ? 'starts' : 'no-change');
};
