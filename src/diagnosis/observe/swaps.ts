import { axleOf, type Corner, cornersOf, type PerCorner, perCorner, sideOf } from '../../rig/corner.ts';
import { popRun, popSpeaker, swapInputs, swapOutputs } from '../../steps/swaps.ts';
import { cellMoves } from '../../world/probe.ts';
import type { World } from '../../world/state.ts';
import { heardCorners, type Ridden } from '../../world/symptoms/symptom.ts';
import { changed, lampOf, lookAt, REAR, rearAmp, rearPlays } from './bike.ts';
import { CANNOT, option, type Says } from './observer.ts';
import { oneSpeaker } from './ohms.ts';
import { type Probes, probesAt } from './probes.ts';

/* What a known good half tells when it takes the place of the other. */

/** The corner on the same side of the other axle. */
const opposite = (corner: Corner): Corner =>
  cornersOf(axleOf(corner) === 'front' ? 'rear' : 'front').find((other) => sideOf(other) === sideOf(corner)) ?? corner;
const crossed = <T>(all: PerCorner<T>): PerCorner<T> => perCorner((corner) => all[opposite(corner)]);

/** The front plugs in the rear inputs of the amplifier, and the other way round. */
const inputsSwapped = (bike: Ridden, i: number): Ridden =>
  changed(bike, 'inputs swapped', (world) => ({
    ...world,
    amps: world.amps.map((amp, at) =>
      at === i ? { ...amp, inputs: crossed(amp.inputs), inputPlug: crossed(amp.inputPlug) } : amp,
    ),
  }));
/** The rear runs on the front outputs, and the other way round. What plays at the front now is the rear. */
const outputsSwapped = (bike: Ridden): Ridden =>
  changed(bike, 'outputs swapped', (world) => ({
    ...world,
    runs: crossed(world.runs),
    speakers: crossed(world.speakers),
  }));

/** The amplifier of the rear if it has front channels as well, or null: others have nothing to swap with. */
function withFront(bike: Ridden): number | null {
  const i = rearAmp(bike);
  return i !== null && bike.world.rig.amps[i]?.drives === 'both' ? i : null;
}
const hasFrontPlug = ({ amps }: World, i: number) => cornersOf('front').some((corner) => amps[i]?.inputs[corner]);

const plays = (it: boolean) => option(it ? 'plays' : 'silent');
const clicks = (bike: Ridden, plug: 'runs' | 'tabs', probes: Probes | null): boolean => {
  const look = lookAt(bike, { key: 'off', toneHz: null, apart: [plug] });
  return look !== null && probes !== null && cellMoves(look, ...probes);
};
const runClicks = (bike: Ridden, corner: Corner) =>
  clicks(bike, 'runs', probesAt(bike, ['run-plus', 'run-minus'], corner));

export const SWAPS: Says = {
  [swapInputs.id]: ({ bike }) => {
    const i = withFront(bike);
    if (i === null || !hasFrontPlug(bike.world, i)) return CANNOT;
    return plays(rearPlays(inputsSwapped(bike, i)));
  },
  [swapOutputs.id]: ({ bike }) => {
    // With the fault lamp on nobody swaps: a short would take the good channel with it.
    if (withFront(bike) === null || lampOf(bike, {}) === 'fault') return CANNOT;
    const swapped = outputsSwapped(bike);
    return plays(heardCorners(swapped, swapped.at({})).some((corner) => axleOf(corner) === 'front'));
  },
  [popRun.id]: ({ bike }) =>
    bike.world.rig.rearFitted === 'no'
      ? CANNOT
      : option(REAR.every((corner) => runClicks(bike, corner)) ? 'moves' : 'dead'),
  [popSpeaker.id]: ({ bike }) => {
    if (bike.world.rig.rearFitted === 'no') return CANNOT;
    const corner = REAR.find((one) => !runClicks(bike, one)) ?? REAR[0];
    if (!corner) return CANNOT;
    const alone = oneSpeaker(bike, corner);
    const tabs = probesAt(alone, ['speaker-plus', 'speaker-minus'], corner);
    return option(clicks(alone, 'tabs', tabs) ? 'moves' : 'dead');
  },
};
