import { ampNodes } from '../world/bike/nodes.ts';
import { powerV } from '../world/bike/operate.ts';
import { LAMP_OHM } from '../world/bike/power.ts';
import type { Moment } from '../world/moment.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { having } from './bike.ts';

export const UNPLUGGED = { toneHz: null, apart: ['remote', 'amp-outputs'] } as const satisfies Partial<Moment>;

/** Above this share of the battery a bulb in the place of the fuse is bright. */
const BRIGHT_RATIO = 0.5;

export function bulbIsBright(bike: Ridden, i: number): boolean {
  const { now } = having(bike, 'bulb for a fuse', { fuseOpen: false, holder: { ohm: LAMP_OHM } }).at(UNPLUGGED);
  if (!now.ok) return true;
  const { fuseIn, holder } = ampNodes(i);
  return powerV(now, fuseIn, holder) > BRIGHT_RATIO * powerV(now, fuseIn);
}
