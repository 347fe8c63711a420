import { ampOf } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayBetweenLook: Say = ({ bike }) => {
  const i = ampOf(bike);
  const amp = i === null ? undefined : bike.world.amps[i];
  return amp ? option(amp.passesDc && amp.level === 'speaker' ? 'direct' : 'box') : CANNOT;
};
