import type { Corner } from '../../rig/corner.ts';
import { beside } from '../../world/mirror.ts';
import type { Ridden } from '../../world/symptoms/symptom.ts';
import { changed, lampOf } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { cornerOnAmp, over, playsAt } from '../sides-over.ts';

/** The left and right runs of a corner’s axle on each other’s outputs. What plays at the left now is the right one. */
const outputsOver = (bike: Ridden, corner: Corner): Ridden =>
  changed(bike, `outputs over ${corner}`, (world) => ({
    ...world,
    runs: over(world.runs, corner),
    speakers: over(world.speakers, corner),
  }));

export const saySwapSidesOut: Say = (asked) => {
  const { bike } = asked;
  const it = cornerOnAmp(asked);
  // With the fault light on nobody changes them over: a short would take the good channel with it.
  if (!it || lampOf(bike, {}) === 'fault') return CANNOT;
  const [corner] = it;
  const after = outputsOver(bike, corner);
  // The channel of the silent one has the other speaker now.
  if (!playsAt(after, beside(corner))) return option('stays');
  return option(playsAt(after, corner) ? 'plays' : 'moves');
};
