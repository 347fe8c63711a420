import type { Findings } from '../outcome.ts';
import { rearPair } from './rear-pair.ts';
import { rearPairAgain } from './rear-pair-again.ts';

/** Rear pairs that read so little that the ear calls it silent: 20 dB under the front. */
const SILENT_RATIO = 0.1;

/** Whether both rear pairs give nothing, or so little that it is silence to an ear. */
export function rearPairSilent(findings: Findings): boolean {
  const found = rearPairFound(findings);
  if (found !== 'uneven') return found === 'none';
  const again = findings.outcome(rearPairAgain.id) === 'uneven';
  const { frontV = 0, leftV = 0, rightV = 0 } = findings.values(again ? rearPairAgain.id : rearPair.id);
  return Math.max(leftV, rightV) < SILENT_RATIO * frontV;
}

/** What was found at the rear pairs: the second reading where there was one. */
export function rearPairFound({ outcome }: Findings): string | undefined {
  const again = outcome(rearPairAgain.id);
  return again === undefined || again === 'cannot' ? outcome(rearPair.id) : again;
}
