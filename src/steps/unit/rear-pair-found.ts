import type { KnownOf } from '../ids.ts';
import type { Findings } from '../outcome.ts';

/** Rear pairs that read so little that the ear calls it silent: 20 dB under the front. */
const SILENT_RATIO = 0.1;

/** Whether both rear pairs give nothing, or so little that it is silence to an ear. */
export function rearPairSilent(findings: Findings): boolean {
  const found = rearPairFound(findings);
  if (found !== 'uneven') return found === 'none';
  const again = findings.outcome('rear-pair-again') === 'uneven';
  const { frontV = 0, leftV = 0, rightV = 0 } = findings.values(again ? 'rear-pair-again' : 'rear-pair');
  return Math.max(leftV, rightV) < SILENT_RATIO * frontV;
}

/** What was found at the rear pairs: the second reading where there was one. */
export function rearPairFound({ outcome }: Findings): KnownOf<'rear-pair'> | undefined {
  const again = outcome('rear-pair-again');
  return again === undefined || again === 'cannot' ? outcome('rear-pair') : again;
}
