/*
 * What a case can hold. A link comes from anywhere, and a small one unpacks into much, so everything that is read of one
 * has an end. Nobody who rides and measures comes near any of these.
 */

/** A long case with changes, repairs, notes and hand-overs has fewer than 200. */
export const MOST_EVENTS = 400;
/** Characters of a step’s, a verdict’s or a flow’s id. */
export const MOST_ID_CHARS = 100;
export const MOST_NOTE_CHARS = 1000;
export const MOST_READING_CHARS = 40;
export const MOST_READINGS = 20;
/** Answers of another flow that did not fit there. */
export const MOST_ODD = 40;
/** Flows that a case came through. */
export const MOST_FLOWS = 10;
/** Characters of an entry that is kept for a newer version, and of a bike that came with more than is known here. */
export const MOST_KEPT_CHARS = 2000;
/** Lines of a fix that are done. */
export const MOST_LINES = 40;
export const MOST_MARK_CHARS = 12;
/** Bytes of a case as text. A longer one is refused whole. */
export const MOST_BYTES = 200_000;

export interface Limited<T> {
  readonly events: readonly T[];
  /** The sentence that says what was left out, if anything was. */
  readonly refused: readonly string[];
}

/**
 * The latest events of a case that holds too many, on the bike that they stood on. In linear time.
 */
export function withinLimits<T>(events: readonly T[], isBike: (event: T) => boolean): Limited<T> {
  if (events.length <= MOST_EVENTS) return { events, refused: [] };
  const latest = events.slice(1 - MOST_EVENTS);
  const bike = events.findLast((event, i) => i <= events.length - MOST_EVENTS && isBike(event));
  const kept = bike ? [bike, ...latest] : latest;
  const refused = `This case has ${events.length} entries, more than any real one. The oldest ${events.length - kept.length} were left out.`;
  return { events: kept, refused: [refused] };
}
