import { ratioBand } from '../../compute/meter.ts';
import type { Situation, Values } from '../step.ts';
import { smallestDigitV } from '../tools/smallest-digit.ts';

/** The ratio of 80 to 400 Hz with what the meter leaves possible on either side. */
export function bassRatio(values: Values, situation: Situation) {
  const [numeratorV, denominatorV] = [values['v80V'] ?? 0, values['v400V'] ?? 0];
  const smallestDigitV_ = smallestDigitV(situation.facts);
  return {
    ratio: numeratorV / denominatorV,
    ...ratioBand({ numeratorV, denominatorV, smallestDigitV: smallestDigitV_ }),
  };
}
