import { axleOf } from '../../../rig/corner.ts';
import { REST_RATIO } from '../../../world/bike/stage.ts';
import { turnsOnBy } from '../../../world/faults/kit.ts';
import type { World } from '../../../world/state.ts';
import { spotOf } from '../../../world/test-points.ts';
import { between, type Draw, happens, type Observe, type Oddity } from '../oddity.ts';
import { cornerOf, pointsOf, readsTone } from '../person/places.ts';
import { retyped, saying, typed } from '../person/saying.ts';

/* Where outputs rest that are sound: anywhere near half the supply, or at nothing while their channel is off. */

/** Less than this on a wire comes from no output that is on. */
const LIVE_V = 1;
/** The two wires of a pair lie apart by less than a healthy pair may. */
const APART_V = 0.45;

const onSignalWires =
  (change: (value: number, red: string, bike: World, name: string) => number | undefined) =>
  (observe: Observe): Observe =>
    saying((given) =>
      retyped(given, (name, value, { step, situation, bike }) => {
        const points = readsTone(step) ? null : pointsOf(step, name, situation);
        if (points?.black !== 'battery-minus') return undefined;
        if (!points.red.startsWith('amp-in') && !points.red.startsWith('unit-')) return undefined;
        const reads = change(value, points.red, bike.world, name);
        return reads === undefined ? undefined : typed(reads, 'V');
      }),
    )(observe);

function restsOff(draw: Draw): (observe: Observe) => Observe {
  const share = between(draw, 0.4, 0.55) / REST_RATIO;
  const apartV = between(draw, 0.1, APART_V) * (happens(draw, 0.5) ? 0.5 : -0.5);
  return onSignalWires((value, red) =>
    value > LIVE_V ? share * value + (red.endsWith('plus') ? apartV : -apartV) : undefined,
  );
}

/** Whether the head unit's channel behind an input is off: not enabled, or dead. */
function isOff(world: World, name: string): boolean {
  const { unit } = world;
  const from = spotOf('amp-in-plus', world, cornerOf(world, name))?.corner;
  return from != null && (unit.deadChannels.includes(from) || (axleOf(from) === 'rear' && !unit.rearOn));
}
const waitsForDc = turnsOnBy('dc');

export const REST: readonly Oddity[] = [
  {
    id: 'rest-unequal',
    says: 'outputs that rest at 0.40 to 0.55 of the supply, the two wires some tenths of a volt apart',
    class: 'rest',
    fits: ({ about }) => about !== null,
    person: (observe, draw) => restsOff(draw)(observe),
  },
  {
    id: 'rest-nothing-when-off',
    says: 'channels that rest at nothing while they are switched off',
    class: 'rest',
    // An amplifier that waits for that DC would stay off.
    fits: (world) => isOff(world, '') && !waitsForDc(world),
    person: (observe) => onSignalWires((_, __, world, name) => (isOff(world, name) ? 0.02 : undefined))(observe),
  },
];
