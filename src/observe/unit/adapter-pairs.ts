import { CORNERS } from '../../rig/corner.ts';
import { isOpen } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayAdapterPairs: Say = ({ bike: { world } }) => {
  if (world.rig.unitKind !== 'replaced') return CANNOT;
  const gap = CORNERS.some((corner) =>
    Object.values(world.unit.plug[corner]).some((contact) => isOpen(contact) && contact.wants !== undefined),
  );
  return option(gap ? 'gap' : 'through');
};
