import type { Band } from '../step.ts';

/** What a terminal without load may lie from the battery: the meter and the leads of a healthy one lose less. An estimate. */
export const NEAR_V = 0.5;

/** Two readings one after the other may differ by so much. An estimate. */
export const DRIFT_V = 0.3;

/** A share of the supply that is as good as nothing: dirt on a blown fuse lets some by. An estimate. */
const NOTHING_RATIO = 0.1;

/** Below this no supply arrives at all. What reads more, however little, is there and gives way. */
export const nothingBelowV = (supplyV: number): number => NOTHING_RATIO * supplyV;

export function plusBands(supplyV: number): readonly Band[] {
  const nothingV = nothingBelowV(supplyV);
  return [
    { label: 'no supply', low: -0.5, high: nothingV, mood: 'bad' },
    { label: 'sags', low: nothingV, high: supplyV / 2, mood: 'bad' },
    { label: 'loses volts', low: supplyV / 2, high: supplyV - NEAR_V, mood: 'unsure' },
    { label: 'healthy', low: supplyV - NEAR_V, high: supplyV + DRIFT_V, mood: 'good' },
  ];
}
