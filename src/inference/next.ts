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
/** No step is so short that it costs nothing to ask. */
const LEAST_MINUTES = 0.1;

function weighed(model: Model, believed: Posterior, offer: Offer): Next {
  const minutes = Math.max(LEAST_MINUTES, offer.minutes);
  const bits = expectedBits(model, believed, offer.step);
  let best: Next = { step: offer.step, bits, score: bits / minutes };
  for (const behind of offer.opens ?? []) {
    const own = Math.max(bits, expectedBits(model, believed, behind.step));
    const score = own / (minutes + behind.minutes);
    if (score > best.score) best = { step: offer.step, bits: own, score };
  }
  return best;
}

/** All that is offered, the most expected bits a minute first; a place that work is going on at is left late. */
export function nextSteps(
  model: Model,
  believed: Posterior,
  offers: readonly Offer[],
  lastPlace?: string,
): readonly Next[] {
  const bonus = new Map(offers.map(({ step, place }) => [step, place === lastPlace ? LEAVE_RATIO : 1]));
  const rank = ({ step, score }: Next) => score * (bonus.get(step) ?? 1);
  return offers.map((offer) => weighed(model, believed, offer)).toSorted((a, b) => rank(b) - rank(a));
}
