import { largestFuseA } from '../compute/fuse.ts';
import { formatQuantity } from '../compute/quantity.ts';
import { ampEstimate, type KnownAmp } from '../rig/rig.ts';
import type { RemedyNumber } from './verdict.ts';

/** The fuse in the main lead of an amplifier, and the lead that it is for: a thinner one takes a smaller fuse. */

const THINNEST_TABLED_M2 = 0.82e-6;
/** A lead under 18 gauge carries no amplifier at all. */
const THIN_LEAD_FUSE_A = 5;

/** Never above what the thinnest lead that it may be carries. */
export function mainFuseA(amp: KnownAmp): number {
  const { low: sectionM2 } = ampEstimate(amp, 'plusLeadM2');
  const leadA = sectionM2 < THINNEST_TABLED_M2 ? THIN_LEAD_FUSE_A : largestFuseA({ sectionM2 });
  return Math.min(ampEstimate(amp, 'mainFuseA').value, leadA);
}

/** The lead in words. Tables of gauges round to as many digits. */
function onLead(amp: KnownAmp): string {
  const { low: sectionM2 } = ampEstimate(amp, 'plusLeadM2');
  return sectionM2 < THINNEST_TABLED_M2
    ? 'a lead that thin'
    : `${formatQuantity(sectionM2 * 1e6, 'mm²', 3)} of copper or more`;
}

export const mainFuseNumber = (amp: KnownAmp): RemedyNumber => ({
  label: `Main fuse on ${onLead(amp)}, at most`,
  value: formatQuantity(mainFuseA(amp), 'A'),
});

/** “40 A on 8.37 mm² of copper or more” */
export const mainFuseAtMost = (amp: KnownAmp): string => `${formatQuantity(mainFuseA(amp), 'A')} on ${onLead(amp)}`;
