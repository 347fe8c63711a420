import { repaired } from '../../world/repair.ts';
import { engineMoves, isMoved } from '../../world/symptoms/tone.ts';
import { changed } from '../bike.ts';
import { unitFlat } from '../left.ts';
import { happens, option, type Say } from '../observer.ts';

/** How often a factory head unit has no such entry. An estimate. */
const HAS_NONE_SHARE = 0.3;

export const saySpeedOff: Say = ({ bike, observer }) => {
  const without = happens(observer, HAS_NONE_SHARE);
  const moves = (it: typeof bike) => engineMoves(it).some(({ ratio }) => isMoved(ratio));
  const off = unitFlat(bike);
  if (moves(bike) && !moves(off)) return option('speed');
  const compensated = changed(off, 'compensation off', (world) =>
    repaired(world, { do: 'set-unit-menu', compensation: 'off' }),
  );
  if (moves(bike) && !moves(compensated)) return option('menu');
  return option(without && bike.world.settings.speedVolumeDb === 0 ? 'none' : 'no-change');
};
