import { LAMP_FOR_FUSE, lampForFuse } from '../world/lamp-for-fuse.ts';
import type { Moment } from '../world/moment.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { having } from './bike.ts';

export const UNPLUGGED = { toneHz: null, apart: ['remote', 'amp-outputs'] } as const satisfies Partial<Moment>;

export function bulbInPlace(bike: Ridden, i: number): 'bright' | 'dim' | 'dark' {
  const { now } = having(bike, 'bulb for a fuse', LAMP_FOR_FUSE).at(UNPLUGGED);
  return now.ok ? lampForFuse(now, i) : 'bright';
}
