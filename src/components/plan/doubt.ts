import type { Standing } from '../../case/standing.ts';
import { readingsClash } from '../../plan/profile/read-again.ts';

/** Why a reading is asked for once more: what was read together, and what may be behind it. */
export function doubtInWords({ findings }: Standing): string {
  const clash = readingsClash(findings);
  return clash ? `${clash.says} ${clash.likely} Take this reading once more.` : 'Take this reading once more.';
}
