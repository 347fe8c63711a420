import type { Corner } from '../rig/corner.ts';
import { withRuns } from '../world/change.ts';
import { OPEN } from '../world/healthy.ts';
import type { World } from '../world/state.ts';

/** Some runs taken off what drives them: what touches in them does not count. */
export const unplugged = (world: World, corners: readonly Corner[]): World =>
  withRuns(world, corners, { dock: OPEN, toFrame: OPEN, acrossPair: OPEN });
