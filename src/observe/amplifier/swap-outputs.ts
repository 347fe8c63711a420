import type { Ridden } from '../../world/symptoms/symptom.ts';
import { bestOf, changed, lampOf, ofConcern } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { crossed, opposite, withFront } from '../swaps.ts';

/** The rear runs on the front outputs, and the other way round. What plays at the front now is the rear. */
const outputsSwapped = (bike: Ridden): Ridden =>
  changed(bike, 'outputs swapped', (world) => ({
    ...world,
    runs: crossed(world.runs),
    speakers: crossed(world.speakers),
  }));

export const saySwapOutputs: Say = ({ found, bike }) => {
  // With the fault light on nobody swaps: a short would take the good channel with it.
  if (withFront(bike) === null || lampOf(bike, {}) === 'fault') return CANNOT;
  return option(bestOf(outputsSwapped(bike), ofConcern(found).map(opposite)));
};
