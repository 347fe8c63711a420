import { ampNodes } from '../world/bike/nodes.ts';
import { powerV } from '../world/bike/operate.ts';
import { LAMP_OHM } from '../world/bike/power.ts';
import type { Moment } from '../world/moment.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { having } from './bike.ts';

export const UNPLUGGED = { toneHz: null, apart: ['remote', 'amp-outputs'] } as const satisfies Partial<Moment>;

/** Above this share of the battery a bulb in the place of the fuse is bright, and above the other it glows. Estimates. */
const BRIGHT_RATIO = 0.5;
const GLOWS_RATIO = 0.15;

export function bulbInPlace(bike: Ridden, i: number): 'bright' | 'dim' | 'dark' {
  const { now } = having(bike, 'bulb for a fuse', { fuseOpen: false, holder: { ohm: LAMP_OHM } }).at(UNPLUGGED);
  if (!now.ok) return 'bright';
  const { fuseIn, holder } = ampNodes(i);
  const ratio = powerV(now, fuseIn, holder) / powerV(now, fuseIn);
  return ratio > BRIGHT_RATIO ? 'bright' : ratio > GLOWS_RATIO ? 'dim' : 'dark';
}
