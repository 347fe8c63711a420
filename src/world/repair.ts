import type { RepairAction } from '../causes/repair-action.ts';
import { PARTS } from './repair/parts.ts';
import { PHONE } from './repair/phone.ts';
import { POWER } from './repair/power.ts';
import type { Repairs } from './repair/repairs.ts';
import { SETTINGS } from './repair/settings.ts';
import { WIRES } from './repair/wires.ts';
import type { World } from './state.ts';

const REPAIRS: Repairs<RepairAction['do']> = { ...SETTINGS, ...WIRES, ...POWER, ...PARTS, ...PHONE };

/**
 * The bike after one repair: what it touches is as on a sound bike of this build, or as the numbers of the action say.
 * What it does not touch stays, broken or not. `world.about` says which amplifier is meant.
 */
export function repaired<A extends RepairAction>(world: World, action: A): World {
  const repair = REPAIRS[action.do] as (world: World, action: A) => World;
  return repair(world, action);
}

/** The same for several, in the order in which they are done: a fuse on a short opens before the short is gone. */
export const withRepairs = (world: World, actions: readonly RepairAction[]): World => actions.reduce(repaired, world);
