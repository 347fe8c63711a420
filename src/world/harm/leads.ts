import { ampCurrentA } from '../../compute/amp-current.ts';
import { largestFuseA } from '../../compute/fuse.ts';
import { awgSectionM2 } from '../../compute/wire.ts';
import type { AmpValues } from '../../rig/fields.ts';
import { EFFICIENCY_RATIO } from '../../steps/supply/amp-feed.ts';
import { CLAD_RATIO, type Wire } from '../elements/wire.ts';
import type { Amp } from '../state.ts';
import { anyAmp } from './any-amp.ts';
import type { Harm } from './harm.ts';

/** The thinnest lead that has a fuse in the table. */
const THINNEST_M2 = awgSectionM2(18);
/** The copper that a lead is worth: aluminium under copper carries what copper of its resistance carries. */
const copperM2 = ({ sectionM2, metal }: Wire): number => (metal === 'clad' ? sectionM2 / CLAD_RATIO : sectionM2);
/** The largest fuse that protects a lead: none for one that is thinner than any in the table. */
function carriesA({ plusLead }: Amp): number {
  const sectionM2 = copperM2(plusLead);
  return sectionM2 < THINNEST_M2 ? 0 : largestFuseA({ sectionM2 });
}
const isAboveLead = (amp: Amp): boolean => amp.fuseRatedA > carriesA(amp);
/** Sections are printed with three digits: so much less is the same lead. */
const SAME_LEAD_RATIO = 0.995;
const isThinner = (lead: Wire, than: Wire): boolean => copperM2(lead) < SAME_LEAD_RATIO * copperM2(than);
const newFuse = (before: Amp, after: Amp): boolean =>
  before.fuseRatedA !== after.fuseRatedA || (before.fuseOpen && !after.fuseOpen);
const newLead = (before: Amp, after: Amp): boolean => before.plusLead !== after.plusLead;

/** The volts that amplifiers are rated at. Source: ANSI/CTA-2006. */
const RATED_AT_V = 14.4;
/** What an amplifier takes on full bass, all the channels driven that speakers hang on. */
function fullBassA({ powerW, drives }: AmpValues): number {
  const channels = drives === 'both' ? 4 : 2;
  return ampCurrentA({ powerW, channels, efficiencyRatio: EFFICIENCY_RATIO, supplyV: RATED_AT_V, averageRatio: 1 });
}
/** So far over its rating a blade fuse opens within ten minutes. Source: ISO 8820-3, by data sheets that name it. */
const OPENS_RATIO = 1.35;

/** Fuses and the leads that they are for. */
export const LEAD_HARMS: readonly Harm[] = [
  {
    id: 'fuse-above-lead',
    says: 'The main fuse is larger than its positive lead carries: the lead burns before it opens.',
    does: anyAmp((before, after) => newFuse(before, after) && isAboveLead(after)),
  },
  {
    id: 'lead-below-fuse',
    says: 'The positive lead is thinner than the fuse in it asks for.',
    does: anyAmp((before, after) => newLead(before, after) && isAboveLead(after)),
  },
  {
    id: 'lead-thinner',
    says: 'The new positive lead has less copper than the old one.',
    does: anyAmp((before, after) => newLead(before, after) && isThinner(after.plusLead, before.plusLead)),
  },
  {
    id: 'lead-below-bass',
    says: 'Full bass takes more than the new positive lead carries: its fuse opens, or the lead runs hot.',
    does: anyAmp(
      (before, after, made) =>
        newLead(before, after) &&
        made !== undefined &&
        OPENS_RATIO * Math.min(after.fuseRatedA, carriesA(after)) < fullBassA(made),
    ),
  },
  {
    id: 'ground-below-plus',
    says: 'The new ground lead is thinner than the positive lead, and carries the same current.',
    does: anyAmp(
      (before, after) => before.groundLead !== after.groundLead && isThinner(after.groundLead, after.plusLead),
    ),
  },
];
