import { REAR } from '../bike.ts';
import { runClicks } from '../clicks.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayPopRun: Say = ({ bike }) =>
  bike.world.rig.rearFitted === 'no'
    ? CANNOT
    : option(REAR.every((corner) => runClicks(bike, corner)) ? 'moves' : 'dead');
