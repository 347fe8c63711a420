import { largestFuseA } from '../compute/fuse.ts';
import { formatQuantity } from '../compute/quantity.ts';
import { awgSectionM2 } from '../compute/wire.ts';

/** Copper of a lead, in words, and the fuse that it carries. */

/** A lead thinner than 18 gauge carries no amplifier, and no fuse of the table protects it. */
export const THINNEST_FUSED_M2 = awgSectionM2(18);

/** The largest fuse that a lead carries; 0 for one that is too thin for any. */
export const carriesA = (sectionM2: number): number =>
  sectionM2 < THINNEST_FUSED_M2 ? 0 : largestFuseA({ sectionM2 });

export const copper = (sectionM2: number): string => `${formatQuantity(sectionM2 / 1e-6, 'mm²', 3)} of copper`;
