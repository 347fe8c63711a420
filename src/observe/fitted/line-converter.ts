import { CANNOT, option, type Say } from '../observer.ts';

export const sayLineConverter: Say = ({ bike: { world } }) => {
  if (world.amps.length === 0) return CANNOT;
  if (world.amps.some(({ converter }) => converter !== 'none')) return option('box');
  return option(world.amps.some(({ level }) => level === 'line') ? 'line' : 'direct');
};
