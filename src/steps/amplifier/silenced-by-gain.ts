import { voltageRatio } from '../../compute/decibel.ts';
import type { Situation, Values } from '../step.ts';
import { expectedGainRatio } from './expected-gain.ts';
import { LEAST_LINE_GAIN, onLineLevel } from './line-level.ts';

/** 20 dB under the gain that is right is silence to an ear; what is less far off only makes it weaker. */
export function silencedByGain(values: Values, situation: Situation): boolean {
  // Whoever cannot tell which level the profile sends takes the lower one: setting the gain harms nothing. On a line-level
  // lead an output below its input is never right.
  const silentRatio = onLineLevel(situation)
    ? LEAST_LINE_GAIN
    : voltageRatio({ gainDb: -20 }) * expectedGainRatio(situation, 'lowered');
  return Math.max(values['leftV'] ?? 0, values['rightV'] ?? 0) < silentRatio * (values['inV'] ?? 0);
}
