import type { Ridden } from '../../world/symptoms/index.ts';
import { ampAt, changed, hisses, ofConcern } from '../bike.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';

/** How often it is the input of a dead channel that died, so that its output stage hisses on. An estimate. */
const INPUT_DIED_SHARE = 1 / 3;

const withoutDeadChannels = (bike: Ridden): Ridden =>
  changed(bike, 'no channel dead', (world) =>
    world.amps.some(({ deadChannels }) => deadChannels.length > 0)
      ? { ...world, amps: world.amps.map((amp) => ({ ...amp, deadChannels: [] })) }
      : world,
  );

export const sayRearHiss: Say = ({ found, bike, observer }) => {
  const corners = ofConcern(found);
  if (corners.every((corner) => ampAt(bike, corner) === null)) return CANNOT;
  // An amplifier that listens stays awake for a while after the music: what was on while it played still hisses.
  if (hisses(bike, corners)) return option('hiss');
  return option(hisses(withoutDeadChannels(bike), corners) && happens(observer, INPUT_DIED_SHARE) ? 'hiss' : 'silent');
};
