import { cornersOf } from '../../rig/corner.ts';
import type { World } from '../../world/state.ts';
import type { Ridden } from '../../world/symptoms/symptom.ts';
import { bestOf, changed, ofConcern } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { crossed, withFront } from '../swaps.ts';

/** The front plugs in the rear inputs of the amplifier, and the other way round. */
const inputsSwapped = (bike: Ridden, i: number): Ridden =>
  changed(bike, 'inputs swapped', (world) => ({
    ...world,
    amps: world.amps.map((amp, at) =>
      at === i ? { ...amp, inputs: crossed(amp.inputs), inputPlug: crossed(amp.inputPlug) } : amp,
    ),
  }));

const hasFrontPlug = ({ amps }: World, i: number) => cornersOf('front').some((corner) => amps[i]?.inputs[corner]);

export const saySwapInputs: Say = ({ found, bike }) => {
  const i = withFront(bike);
  if (i === null || !hasFrontPlug(bike.world, i)) return CANNOT;
  return option(bestOf(inputsSwapped(bike, i), ofConcern(found)));
};
