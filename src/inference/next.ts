import { expectedBits } from './gain.ts';
import type { Posterior } from './posterior.ts';
import type { Model } from './table.ts';

/** A step that makes sense and is safe now. */
export interface Offer {
  readonly step: string;
  /** Its minutes, those of the conditions that are not there yet included. */
  readonly minutes: number;
  /** Where on the bike it is done. */
  readonly place: string;
  /** Steps that cannot be asked before it, each with the minutes that it takes then. */
  readonly opens?: readonly { readonly step: string; readonly minutes: number }[];
}

export interface Next {
  readonly step: string;
  readonly bits: number;
  /** Bits a minute, over the step and the one that it opens, if that is what makes it worth while. */
  readonly score: number;
}

/** A place is left only for so many times the gain a minute: plugs that are open are finished first. Judged. */
const LEAVE_RATIO = 1.3;
/**
 * Steps that tell much come before short ones that tell little: bits to this power, a minute. What a little question leaves
 * open has to be asked for all the same, and what a telling one settles makes little questions unnecessary. Judged in the
 * proof: 1 is bits a minute; from 1.3 to 2 minutes fall by up to a twentieth, and more is told at the end.
 */
const TELLING_POWER = 1.6;
/** No step is so short that it costs nothing to ask. */
const LEAST_MINUTES = 0.1;

interface Ranked {
  readonly next: Next;
  readonly rank: number;
}

const rankedBy = (step: string, bits: number, minutes: number): Ranked => ({
  next: { step, bits, score: bits / minutes },
  rank: bits ** TELLING_POWER / minutes,
});

function weighed(bitsOf: ReadonlyMap<string, number>, offer: Offer): Ranked {
  const minutes = Math.max(LEAST_MINUTES, offer.minutes);
  const bits = bitsOf.get(offer.step) ?? 0;
  let best = rankedBy(offer.step, bits, minutes);
  for (const behind of offer.opens ?? []) {
    const withIt = rankedBy(offer.step, Math.max(bits, bitsOf.get(behind.step) ?? 0), minutes + behind.minutes);
    if (withIt.rank > best.rank) best = withIt;
  }
  return best;
}

/** All that is offered, what tells most for its minutes first; a place that work is going on at is left late. */
export function nextSteps(
  model: Model,
  believed: Posterior,
  offers: readonly Offer[],
  lastPlace?: string,
): readonly Next[] {
  // A step that several others open is weighed once.
  const steps = new Set(offers.flatMap(({ step, opens = [] }) => [step, ...opens.map((behind) => behind.step)]));
  const bitsOf = new Map([...steps].map((step) => [step, expectedBits(model, believed, step)]));
  return offers
    .map((offer) => {
      const { next, rank } = weighed(bitsOf, offer);
      return { next, rank: offer.place === lastPlace ? LEAVE_RATIO * rank : rank };
    })
    .toSorted((a, b) => b.rank - a.rank)
    .map(({ next }) => next);
}
