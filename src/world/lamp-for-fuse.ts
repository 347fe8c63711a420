import { ampNodes } from './bike/nodes.ts';
import { type Operating, powerV } from './bike/operate.ts';
import { LAMP_OHM } from './bike/power.ts';
import type { Amp } from './state.ts';

/** Above this share of the battery a lamp in the place of the fuse is bright, and above the other it glows. Estimates. */
const LAMP_BRIGHT_RATIO = 0.5;
const LAMP_GLOWS_RATIO = 0.15;

/** A lamp in the place of a main fuse: it limits what a short takes, and shines by it. */
export const LAMP_FOR_FUSE: Partial<Amp> = { fuseOpen: false, holder: { ohm: LAMP_OHM } };

export function lampForFuse(now: Operating, i: number): 'bright' | 'dim' | 'dark' {
  const { fuseIn, holder } = ampNodes(i);
  const ratio = powerV(now, fuseIn, holder) / powerV(now, fuseIn);
  return ratio > LAMP_BRIGHT_RATIO ? 'bright' : ratio > LAMP_GLOWS_RATIO ? 'dim' : 'dark';
}
