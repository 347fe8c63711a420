import { largestFuseA } from '../compute/fuse.ts';
import { fuseNeededA, sectionForFuseM2 } from '../compute/lead-choice.ts';
import { formatQuantity } from '../compute/quantity.ts';
import { ampEstimate } from '../rig/rig.ts';
import type { Findings } from '../steps/outcome.ts';
import { fullBassA } from './amp-load.ts';
import type { Figure } from './figure.ts';
import type { RepairAction } from './repair-action.ts';
import { ampOf } from './the-amp.ts';

/** The fuse in the plus lead of an amplifier, and the lead that it is for: one is never named without the other. */

const THINNEST_TABLED_M2 = 0.82e-6;
/** A lead under 18 gauge carries no amplifier at all. */
const THIN_LEAD_FUSE_A = 5;
/** Leads that amplifiers of bikes are found on. */
const USUAL_LEADS_M2 = [5.26e-6, 8.37e-6, 13.3e-6];

/** The largest fuse that a lead carries, as thin as leads come. */
export const carriesA = (sectionM2: number): number =>
  sectionM2 < THINNEST_TABLED_M2 ? THIN_LEAD_FUSE_A : largestFuseA({ sectionM2 });

const amperes = (fuseA: number): string => formatQuantity(fuseA, 'A');
export const copper = (sectionM2: number): string => `${formatQuantity(sectionM2 / 1e-6, 'mm²', 3)} of copper`;

/** The fuse that was in is known, and so is its lead, and it is too large for it. */
function tooLargeFor(f: Findings): number | undefined {
  const { mainFuseA, plusLeadM2 } = ampOf(f);
  if (mainFuseA === undefined || plusLeadM2 === undefined) return undefined;
  const mostA = carriesA(plusLeadM2);
  return mainFuseA > mostA ? mostA : undefined;
}

const atMost = (sectionM2: number): Figure => ({
  id: `main-fuse-on-${formatQuantity(sectionM2 / 1e-6, 'mm²', 3).replace(' mm²', '')}`,
  label: `Main fuse on ${copper(sectionM2)}`,
  value: carriesA(sectionM2),
  unit: 'A',
  limit: 'at most',
  digits: 3,
});

/** What its lead carries; of a lead that nobody knows, what each usual one does. */
export function fuseFigures(f: Findings): readonly Figure[] {
  const { plusLeadM2 } = ampOf(f);
  return plusLeadM2 === undefined ? USUAL_LEADS_M2.map(atMost) : [atMost(plusLeadM2)];
}

/** The fuse to fit on the lead that is there, in words. */
export function fuseInWords(f: Findings): string {
  const { mainFuseA, plusLeadM2 } = ampOf(f);
  const mostA = tooLargeFor(f);
  if (mostA !== undefined && plusLeadM2 !== undefined)
    return `${amperes(mostA)}. ${copper(plusLeadM2)} carries no more than that, whatever was in it`;
  if (mainFuseA !== undefined && plusLeadM2 !== undefined)
    return `${amperes(mainFuseA)}, as before, on ${copper(plusLeadM2)}`;
  if (plusLeadM2 !== undefined)
    return `the old rating, at most ${amperes(carriesA(plusLeadM2))} on ${copper(plusLeadM2)}`;
  if (mainFuseA !== undefined)
    return `${amperes(mainFuseA)}, as before, if its lead has ${copper(sectionForFuseM2({ fuseA: mainFuseA }))} or more: its jacket says`;
  const usual = USUAL_LEADS_M2.map((sectionM2) => `${amperes(carriesA(sectionM2))} on ${copper(sectionM2)}`);
  return `the old rating, and no more than its lead carries: ${usual.join(', ')}. The jacket names the section`;
}

/** What to buy. */
export function fusePart(f: Findings): string {
  const { mainFuseA } = ampOf(f);
  const fuseA = tooLargeFor(f) ?? mainFuseA;
  return fuseA === undefined ? 'One main fuse of the old rating' : `One main fuse, ${amperes(fuseA)}`;
}

/** The rating that was there, unless its lead is known to carry less. */
export function renewMainFuse(f: Findings): RepairAction {
  const ratedA = tooLargeFor(f);
  return { do: 'renew-fuse', fuse: 'main', ...(ratedA !== undefined && { ratedA }) };
}

/** The fuse for a new holder on the old lead: the one that was in it; where nobody knows it, one for the thinnest usual lead. */
export function fuseOnOldLeadA(f: Findings): number {
  const amp = ampOf(f);
  const mostA = carriesA(ampEstimate(amp, 'plusLeadM2').low);
  if (amp.mainFuseA === undefined) return Math.min(fuseNeededA({ currentA: fullBassA(f) }), mostA);
  return tooLargeFor(f) ?? amp.mainFuseA;
}
