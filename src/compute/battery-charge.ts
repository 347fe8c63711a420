import { requireNotNegative, requirePositive, requireWithin } from './require.ts';

const HOUR_S = 3600;

/** Ampere-hours that a lead-acid battery gives back of those put in. From memory; 0.8 to 0.95 is usual. */
export const CHARGE_KEPT_RATIO = 0.85;

/** A stretch of a ride: what is made, what is used, and for how long. */
export interface Stretch {
  readonly madeA: number;
  readonly usedA: number;
  readonly timeS: number;
}

/**
 * What a ride adds to a battery, in ampere-hours; negative if it takes: Σ (made − used) × time. Of what flows in, only
 * `keptRatio` stays; what flows out is gone whole.
 *
 * Source: conservation of charge. Valid: while the battery is neither full nor empty: a full one takes no more, and one
 * near it takes less than is offered.
 * @throws {RangeError} if a current or a time is negative or not finite, or the ratio is not above 0 and at most 1.
 */
export function chargeAddedAh(stretches: readonly Stretch[], keptRatio = CHARGE_KEPT_RATIO): number {
  requirePositive({ keptRatio });
  requireWithin({ keptRatio }, 0, 1);
  return stretches.reduce((sum, { madeA, usedA, timeS }) => {
    requireNotNegative({ madeA, usedA, timeS });
    const netAh = ((madeA - usedA) * timeS) / HOUR_S;
    return sum + (netAh > 0 ? keptRatio * netAh : netAh);
  }, 0);
}

/**
 * How long a battery feeds a draw until a share of its charge is gone: C × share / I.
 *
 * Source: conservation of charge. Valid: for draws below the 20-hour current (a twentieth of the ampere-hours), at which
 * capacity is stated; a larger draw gets less out (Peukert). Cold takes more: about half is left at −18 °C (from memory).
 * @throws {RangeError} if capacity or draw is not finite and above 0, or the share is not from 0 to 1.
 */
export function timeToUseS({
  capacityAh,
  shareRatio,
  drawA,
}: {
  capacityAh: number;
  shareRatio: number;
  drawA: number;
}) {
  requirePositive({ capacityAh, drawA });
  requireWithin({ shareRatio }, 0, 1);
  return (capacityAh * shareRatio * HOUR_S) / drawA;
}

/**
 * The largest parked draw that leaves a battery enough after some time: C × share / time. Source, validity: `timeToUseS`.
 *
 * @throws {RangeError} if capacity or time is not finite and above 0, or the share is not from 0 to 1.
 */
export function drawAllowedA({
  capacityAh,
  shareRatio,
  timeS,
}: {
  capacityAh: number;
  shareRatio: number;
  timeS: number;
}) {
  requirePositive({ capacityAh, timeS });
  requireWithin({ shareRatio }, 0, 1);
  return (capacityAh * shareRatio * HOUR_S) / timeS;
}
