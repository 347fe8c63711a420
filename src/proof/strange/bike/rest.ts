import { axleOf, perCorner } from '../../../rig/corner.ts';
import { hasAmp, turnsOnBy, withUnit } from '../../../world/faults/kit.ts';
import type { World } from '../../../world/state.ts';
import { spotOf } from '../../../world/test-points.ts';
import { between, happens, type Observe, type Oddity } from '../oddity.ts';
import { cornerOf, pointsOf, readsTone } from '../person/places.ts';
import { retyped, saying, typed } from '../person/saying.ts';
import type { Change } from './harmless.ts';

/* Where outputs rest that are sound: anywhere near half the supply, or at nothing while their channel is off. */

/** The two wires of a pair lie apart by less than a healthy pair may. What a damaged output adds comes on top. */
const APART_V = [0.1, 0.45] as const;
const restsOff: Change = (world, draw) => {
  const restRatio = between(draw, 0.4, 0.55);
  const apartV = between(draw, ...APART_V) * (happens(draw, 0.5) ? 1 : -1);
  return withUnit(world, ({ outputDcV }) => ({
    restRatio,
    outputDcV: perCorner((corner) => outputDcV[corner] + apartV),
  }));
};

/** The head unit's channel behind an input of the amplifier. */
const channelAt = (world: World, name: string) => spotOf('amp-in-plus', world, cornerOf(world, name))?.corner ?? null;
const isDead = (world: World, name: string): boolean => {
  const from = channelAt(world, name);
  return from !== null && world.unit.deadChannels.includes(from);
};
function isOff(world: World, name: string): boolean {
  const from = channelAt(world, name);
  return isDead(world, name) || (from !== null && axleOf(from) === 'rear' && !world.unit.rearOn);
}
const waitsForDc = turnsOnBy('dc');

const NOTHING_V = 0.02;
/** A channel that is dead rests at half the supply on every bike: that one does not shows in what is told only. */
const deadRestsAtNothing = (observe: Observe): Observe =>
  saying((given) =>
    retyped(given, (name, _, { step, situation, bike }) => {
      const points = readsTone(step) ? null : pointsOf(step, name, situation);
      if (points?.black !== 'battery-minus' || !isDead(bike.world, name)) return undefined;
      const onSignalWire = points.red.startsWith('amp-in') || points.red.startsWith('unit-');
      return onSignalWire ? typed(NOTHING_V, 'V') : undefined;
    }),
  )(observe);

export const REST: readonly Oddity[] = [
  {
    id: 'rest-unequal',
    says: 'outputs that rest at 0.40 to 0.55 of the supply, the two wires some tenths of a volt apart',
    class: 'rest',
    fits: hasAmp,
    bike: restsOff,
  },
  {
    id: 'rest-nothing-when-off',
    says: 'channels that rest at nothing while they are switched off',
    class: 'rest',
    // An amplifier that waits for that DC would stay off.
    fits: (world) => isOff(world, '') && !waitsForDc(world),
    bike: (world) => withUnit(world, { restsWhenOff: false }),
    person: deadRestsAtNothing,
  },
];
