import { type Corner, type PerCorner, perCorner } from '../rig/corner.ts';
import type { World } from './state.ts';

/** The corner on the other side of the same axle. */
export const beside = (corner: Corner): Corner =>
  (corner.endsWith('left') ? corner.replace('left', 'right') : corner.replace('right', 'left')) as Corner;

export const mirrored = <T>(all: PerCorner<T>): PerCorner<T> => perCorner((corner) => all[beside(corner)]);

/** The same bike with left for right: a build is the same on both sides, and what is wrong with it changes over. */
export const mirror = (world: World): World => ({
  ...world,
  unit: {
    ...world.unit,
    deadChannels: world.unit.deadChannels.map(beside),
    plug: mirrored(world.unit.plug),
    toGround: mirrored(world.unit.toGround),
    levelRatio: mirrored(world.unit.levelRatio),
    outputDcV: mirrored(world.unit.outputDcV),
  },
  settings: { ...world.settings, balance: world.settings.balance === 0 ? 0 : -world.settings.balance },
  amps: world.amps.map((amp) => ({
    ...amp,
    inputs: perCorner((corner) => {
      const from = amp.inputs[beside(corner)];
      return from && beside(from);
    }),
    inputPlug: mirrored(amp.inputPlug),
    deadChannels: amp.deadChannels.map(beside),
    roughChannels: amp.roughChannels.map(beside),
  })),
  runs: mirrored(world.runs),
  speakers: mirrored(world.speakers),
});
