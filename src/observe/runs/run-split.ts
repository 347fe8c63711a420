import { dockBike, dockLid } from '../../world/bike/nodes.ts';
import type { Plug } from '../../world/moment.ts';
import { driverOf } from '../../world/valued-rig.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { cornerAsked, dead, ohmsOf, runOf } from '../ohms.ts';

export const sayRunSplit: Say = (asked) => {
  const { bike } = asked;
  if (bike.world.rig.rearFitted === 'no') return CANNOT;
  if (bike.world.rig.rearPlug === 'no') return option('no-plug');
  const corner = cornerAsked(asked);
  const where = driverOf(bike.world.rig, corner);
  const spot = (node: string) => ({ where, node, corner });
  // From here the coil is seen if what is too much from the far end is gone.
  const mostOhm = ((runOf(bike, corner) ?? Infinity) + (runOf(bike.healthy(), corner) ?? 0)) / 2;
  const seen = (at: typeof dockLid, apart: readonly Plug[]) => {
    const ohm = ohmsOf(bike, dead(apart), [spot(at(corner, '+')), spot(at(corner, '−'))]);
    return ohm !== null && ohm < mostOhm;
  };
  if (!seen(dockLid, ['runs', 'dock'])) return option('lid-side');
  return option(seen(dockBike, ['runs']) ? 'bike-side' : 'contacts');
};
