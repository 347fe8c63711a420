import { ampOf, isOpen } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayAdapterLook: Say = ({ bike }) => {
  const i = ampOf(bike);
  const amp = i === null ? undefined : bike.world.amps[i];
  if (!amp || bike.world.rig.unitKind !== 'replaced') return CANNOT;
  return option(isOpen(amp.remotePin) ? 'gap' : 'through');
};
