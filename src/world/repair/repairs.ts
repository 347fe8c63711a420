import type { RepairAction } from '../../causes/repair-action.ts';
import type { World } from '../state.ts';

type Do = RepairAction['do'];

/** What each of some actions does to a bike. */
export type Repairs<D extends Do> = {
  readonly [K in D]: (world: World, action: Extract<RepairAction, { readonly do: K }>) => World;
};
