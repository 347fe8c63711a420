import { toText } from '../../case/case-text.ts';
import type { Case } from '../../case/events.ts';
import type { Standing } from '../../case/standing.ts';

/** Where cases stand, each worked out once: ahead of the tap that leads there, or at it. */
export interface Ahead {
  of(it: Case): Standing;
  /** Forgets what no tap can lead to any more. */
  keepOnly(cases: readonly Case[]): void;
}

export function ahead(stand: (it: Case) => Standing): Ahead {
  const known = new Map<string, Standing>();
  return {
    of(it) {
      const text = toText(it);
      const before = known.get(text);
      if (before) return before;
      const standing = stand(it);
      known.set(text, standing);
      return standing;
    },
    keepOnly(cases) {
      const kept = new Set(cases.map(toText));
      for (const text of known.keys()) if (!kept.has(text)) known.delete(text);
    },
  };
}
