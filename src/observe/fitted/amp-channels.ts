import { driverOf } from '../../world/valued-rig.ts';
import { rearAmp } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayAmpChannels: Say = ({ bike }) => {
  const i = rearAmp(bike);
  if (i === null) return CANNOT;
  const { rig } = bike.world;
  // Each corner that it drives has a channel of its own.
  const least = bike.fitted.filter((corner) => driverOf(rig, corner) === i).length;
  const channels = Math.max(least, rig.amps[i]?.channels ?? 0);
  return option(channels <= 2 ? '2' : channels <= 4 ? '4' : 'more');
};
