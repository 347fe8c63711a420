import { formatQuantity } from '../../compute/quantity.ts';
import { numberIn } from '../outcome.ts';
import type { Facts } from '../step.ts';

/** Half as much again as what is there with the tone off is still not the tone. An estimate. */
export const HIDDEN_RATIO = 1.5;

/** What the pairs of the head unit show with the tone off, where somebody read it. */
export const unitResidueV = (facts: Facts): number =>
  Math.max(0, ...['rear-pair', 'rear-pair-again'].map((step) => numberIn(facts[step], 'residueV', 'V') ?? 0));

/** A refusal of readings in which residue would pass for a dead output, or hide a healthy one. */
export function hiddenBy(
  residueV: number | undefined,
  leastHealthyV: number,
  reference: { readonly reading: string; readonly valueV: number | undefined },
) {
  const { reading, valueV } = reference;
  if (!valueV || residueV === undefined || HIDDEN_RATIO * residueV <= leastHealthyV) return null;
  const neededV = (valueV * HIDDEN_RATIO * residueV) / leastHealthyV;
  return {
    reading,
    message: `The residue of ${formatQuantity(residueV, 'V', 2)} would hide the tone. Turn the volume up until this reads at least ${formatQuantity(neededV, 'V', 2)}, then take all readings again.`,
  };
}
