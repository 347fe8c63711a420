import { axleOf, type Corner, cornersOf, inFrontOf, sideOf } from '../rig/corner.ts';
import type { TestPoint } from '../steps/test-points.ts';
import { ampIn, ampNodes, ampOut, BATTERY_PLUS, lineOut, MINUS, runStart, tab, unitOut } from './bike/nodes.ts';
import type { World } from './state.ts';
import { driverOf, isFitted } from './valued-rig.ts';

/** Which of the bike's networks a probe is in: the power network, the unit's pairs, or an amplifier's outputs. */
export type Where = 'power' | 'unit' | number;
/** A place for a probe: a node, and the corner whose sound passes there. */
export interface Spot {
  readonly where: Where;
  readonly node: string;
  readonly corner: Corner | null;
}

/** What the places of an amplifier's supply are called in its network. */
const TERMINAL = {
  'fuse-in': 'fuseIn',
  'fuse-out': 'fuseOut',
  'plus-copper': 'plusEnd',
  'amp-plus': 'plus',
  'amp-ground': 'ground',
  // No bike of the model has a bad joint here: the copper is the terminal.
  'ground-copper': 'ground',
  'amp-remote': 'remote',
  'remote-start': 'remoteStart',
} as const;

/** Ground is the same place in every network. */
export const ground = (where: Where): Spot => ({ where, node: MINUS, corner: null });
export const powerSpot = (node: string): Spot => ({ where: 'power', node, corner: null });

const onSideOf = (corner: Corner, axle: 'front' | 'rear'): Corner =>
  cornersOf(axle).find((other) => sideOf(other) === sideOf(corner)) ?? corner;

/** The input of an amplifier that a corner's sound takes: its own, or that of the front when only that one is wired. */
function inputOf(world: World, amp: number, corner: Corner): Corner {
  const inputs = world.amps[amp]?.inputs;
  return inputs?.[corner] || axleOf(corner) === 'front' ? corner : inFrontOf(corner);
}

/**
 * Where the probe of a step goes on this bike, or null where there is no such place (an amplifier's screw on a bike
 * without one). `corner` says which side, and which pair where the point leaves it open. An input of an amplifier is
 * read on the amplifier with its plug fitted, or on the side of the loom.
 */
export function spotOf(point: TestPoint, world: World, corner: Corner, at: 'device' | 'loom' = 'device'): Spot | null {
  const sign = point.endsWith('plus') ? '+' : '−';
  const driver = driverOf(world.rig, corner);
  const fitted = isFitted(world.rig, corner);
  switch (point) {
    case 'unit-front-plus':
    case 'unit-front-minus':
    case 'unit-rear-plus':
    case 'unit-rear-minus': {
      const pair = onSideOf(corner, point.startsWith('unit-front') ? 'front' : 'rear');
      return { where: 'unit', node: unitOut(pair, sign), corner: pair };
    }
    case 'amp-in-plus':
    case 'amp-in-minus': {
      if (driver === 'unit' || !fitted) return null;
      const input = inputOf(world, driver, corner);
      const from = world.amps[driver]?.inputs[input];
      if (!from) return null;
      const node = at === 'device' ? ampIn(driver, input, sign) : lineOut(driver, input, sign);
      return { where: 'unit', node, corner: from };
    }
    case 'amp-out-plus':
    case 'amp-out-minus':
      return driver === 'unit' || !fitted ? null : { where: driver, node: ampOut(corner, sign), corner };
    case 'run-plus':
    case 'run-minus':
      return fitted ? { where: driver, node: runStart(corner, sign), corner } : null;
    case 'speaker-plus':
    case 'speaker-minus':
      return fitted ? { where: driver, node: tab(corner, sign), corner } : null;
    case 'frame':
    case 'battery-minus':
      return ground('power');
    case 'battery-plus':
      return powerSpot(BATTERY_PLUS);
    case 'fuse-in':
    case 'fuse-out':
    case 'plus-copper':
    case 'amp-plus':
    case 'amp-ground':
    case 'ground-copper':
    case 'amp-remote':
    case 'remote-start':
      return driver === 'unit' || !fitted ? null : powerSpot(ampNodes(driver)[TERMINAL[point]]);
  }
}
