import type { CaseEvent } from './events.ts';

export type ReadingsByStep = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** What was last read in each measurement of a case, also where a repair has made it stale. */
export const lastReadings = (events: readonly CaseEvent[]): ReadingsByStep =>
  Object.fromEntries(
    events.flatMap((event) =>
      'answer' in event && event.answer && 'readings' in event.answer
        ? [[event.step, event.answer.readings] as const]
        : [],
    ),
  );
