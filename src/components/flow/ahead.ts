import { toText } from '../../case/case-text.ts';
import type { Case } from '../../case/events.ts';

/** What there is to know of cases, each worked out once: ahead of the tap that leads there, or at it. */
export interface Ahead<T> {
  of(it: Case): T;
  /** Forgets what no tap can lead to any more. */
  keepOnly(cases: readonly Case[]): void;
}

export function ahead<T>(workOut: (it: Case) => T): Ahead<T> {
  const known = new Map<string, { readonly value: T }>();
  return {
    of(it) {
      const text = toText(it);
      const before = known.get(text);
      if (before) return before.value;
      const value = workOut(it);
      known.set(text, { value });
      return value;
    },
    keepOnly(cases) {
      const kept = new Set(cases.map(toText));
      for (const text of known.keys()) if (!kept.has(text)) known.delete(text);
    },
  };
}
