import { axleOf } from '../../rig/corner.ts';
import { heardCorners, type Ridden } from '../../world/symptoms/symptom.ts';
import { changed, lampOf } from '../bike.ts';
import { CANNOT, type Say } from '../observer.ts';
import { crossed, plays, withFront } from '../swaps.ts';

/** The rear runs on the front outputs, and the other way round. What plays at the front now is the rear. */
const outputsSwapped = (bike: Ridden): Ridden =>
  changed(bike, 'outputs swapped', (world) => ({
    ...world,
    runs: crossed(world.runs),
    speakers: crossed(world.speakers),
  }));

export const saySwapOutputs: Say = ({ bike }) => {
  // With the fault lamp on nobody swaps: a short would take the good channel with it.
  if (withFront(bike) === null || lampOf(bike, {}) === 'fault') return CANNOT;
  const swapped = outputsSwapped(bike);
  return plays(heardCorners(swapped, swapped.at({})).some((corner) => axleOf(corner) === 'front'));
};
