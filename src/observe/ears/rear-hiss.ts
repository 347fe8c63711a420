import { hisses, ofConcern, rearAmp } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayRearHiss: Say = ({ found, bike }) => {
  if (rearAmp(bike) === null) return CANNOT;
  // An amplifier that listens stays awake for a while after the music: what was on while it played still hisses.
  return option(hisses(bike, ofConcern(found)) ? 'hiss' : 'silent');
};
