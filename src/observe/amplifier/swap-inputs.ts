import { cornersOf } from '../../rig/corner.ts';
import type { World } from '../../world/state.ts';
import type { Ridden } from '../../world/symptoms/symptom.ts';
import { changed, rearPlays } from '../bike.ts';
import { CANNOT, type Say } from '../observer.ts';
import { crossed, plays, withFront } from '../swaps.ts';

/** The front plugs in the rear inputs of the amplifier, and the other way round. */
const inputsSwapped = (bike: Ridden, i: number): Ridden =>
  changed(bike, 'inputs swapped', (world) => ({
    ...world,
    amps: world.amps.map((amp, at) =>
      at === i ? { ...amp, inputs: crossed(amp.inputs), inputPlug: crossed(amp.inputPlug) } : amp,
    ),
  }));

const hasFrontPlug = ({ amps }: World, i: number) => cornersOf('front').some((corner) => amps[i]?.inputs[corner]);

export const saySwapInputs: Say = ({ bike }) => {
  const i = withFront(bike);
  if (i === null || !hasFrontPlug(bike.world, i)) return CANNOT;
  return plays(rearPlays(inputsSwapped(bike, i)));
};
