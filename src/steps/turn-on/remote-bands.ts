import {
  REMOTE_LOSS_V,
  REMOTE_NOTHING_BELOW_V,
  REMOTE_ON_HIGHEST_V,
  REMOTE_ON_LOWEST_V,
} from '../../compute/amp-supply.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import type { Band, Situation, Values } from '../step.ts';
import { batteryV } from '../supply/amp-feed.ts';

export function remoteBands(situation: Situation): readonly Band[] {
  const supplyV = batteryV(situation);
  const healthyV = Math.max(REMOTE_ON_HIGHEST_V, supplyV - REMOTE_LOSS_V);
  return [
    { label: 'nothing', low: -0.5, high: REMOTE_NOTHING_BELOW_V, mood: 'bad' },
    { label: 'too little', low: REMOTE_NOTHING_BELOW_V, high: REMOTE_ON_HIGHEST_V, mood: 'bad' },
    { label: 'enough for most', low: REMOTE_ON_HIGHEST_V, high: healthyV, mood: 'unsure' },
    { label: 'healthy', low: healthyV, high: healthyV + 2, mood: 'good' },
  ];
}

export const remoteHealthy = (_: Values, s: Situation) =>
  `Healthy is above ${formatQuantity(batteryV(s) - REMOTE_LOSS_V, 'V', 3)}. Amplifiers switch on above ${formatRange(REMOTE_ON_LOWEST_V, REMOTE_ON_HIGHEST_V, 'V')}.`;
