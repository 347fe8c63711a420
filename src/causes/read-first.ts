import type { ampEstimate } from '../rig/rig.ts';
import type { Findings } from '../steps/outcome.ts';
import { ampOf } from './the-amp.ts';

/**
 * What is read off the bike before a fix is done: its numbers hang on it, and what somebody said, or what is usual, may
 * not be so. The fix says it in words, and whoever does the fix does it with what he read.
 */
export type ReadFirst =
  /** Section and metal of the positive lead that is there, and its length. */
  | 'plus-lead'
  /** Watts, ohms and channels of the amplifier. */
  | 'rating'
  /** Whether amplifiers were made for the unaltered output. */
  | 'made-for'
  /** Whether a wire is fitted that switches the amplifier, or what it listens for instead. */
  | 'turn-on';

type AmpNumber = Parameters<typeof ampEstimate>[1];
/** Asked without looking at the number: what a remedy looks at is listed as what it was worked out with. */
const isAssumed = (f: Findings, ...fields: readonly AmpNumber[]): boolean =>
  fields.some((field) => !(field in ampOf(f)));

/** Whether nobody said what the amplifier of a case is rated for. */
export const ratingAssumed = (f: Findings): boolean => isAssumed(f, 'powerW', 'ratedOhm');

const channelsUnknown = (f: Findings): boolean => ampOf(f).drives !== 'both' && isAssumed(f, 'channels');

/** One of two amplifiers is soon taken for the other: then the lead in the hand says more than what was said of it. */
const mayBeTheOther = ({ rig: { amps = [] } }: Findings): boolean => amps.length > 1;

/** What of a new lead is only assumed, or may be that of the other amplifier. */
export const readsForLead = (f: Findings): readonly ReadFirst[] => [
  ...(isAssumed(f, 'plusLeadM2', 'plusLeadM') || mayBeTheOther(f) ? (['plus-lead'] as const) : []),
  ...(isAssumed(f, 'powerW') || channelsUnknown(f) ? (['rating'] as const) : []),
];
/** What of a gain is only assumed. */
export const readsForGain = (f: Findings): readonly ReadFirst[] => (ratingAssumed(f) ? ['rating'] : []);

/** Amplifiers of which nobody said what they were made for. */
export const readsForLevel = ({ rig: { amps = [] } }: Findings): readonly ReadFirst[] =>
  amps.some(({ needs }) => needs === undefined) ? ['made-for'] : [];
