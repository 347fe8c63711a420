import type { Row, Table } from '../inference/table.ts';
import { type Counts, type Found, gathered, type Seen, type Survey } from './survey.ts';

type Shows = Map<string, readonly number[]>;

/** Rows of one cause whose shares differ by less than this at every step are one row: that is chance, not another kind. */
const SAME_SHARE = 0.3;

const outcomesOf = (seen: readonly Seen[]): Record<string, string[]> => {
  const names: Record<string, string[]> = {};
  for (const { counts } of seen)
    for (const [step, own] of counts) names[step] = [...new Set([...(names[step] ?? []), ...own.keys()])].toSorted();
  return names;
};

const sharesOf = (counts: Counts, names: Record<string, string[]>): Shows =>
  new Map(
    [...counts].map(([step, own]) => {
      const total = [...own.values()].reduce((sum, n) => sum + n, 0);
      return [step, (names[step] ?? []).map((outcome) => (own.get(outcome) ?? 0) / total)];
    }),
  );

/** A step that one of them does not have at all makes no difference. */
const alike = (a: Shows, b: Shows, apart: ReadonlySet<string>): boolean =>
  [...a].every(([step, own]) => {
    const other = b.get(step);
    return apart.has(step) || !other || own.every((share, o) => Math.abs(share - (other[o] ?? 0)) < SAME_SHARE);
  });

interface Gathered {
  readonly cause: string;
  weight: number;
  looks: number;
  shows: Shows;
}

/** Both weigh in by what they stand for: counts of the heavier one are not drowned by those of one with more bikes. */
function join(a: Gathered, b: Gathered, names: Record<string, string[]>): void {
  const total = a.weight + b.weight;
  const steps = new Set([...a.shows.keys(), ...b.shows.keys()]);
  a.shows = new Map(
    [...steps].map((step) => {
      const [one, other] = [a.shows.get(step), b.shows.get(step)];
      if (!one || !other) return [step, (one ?? other) as readonly number[]];
      const mixed = (names[step] ?? []).map((_, o) => (a.weight * (one[o] ?? 0) + b.weight * (other[o] ?? 0)) / total);
      return [step, mixed];
    }),
  );
  a.weight = total;
  a.looks += b.looks;
}

/** What is built in and what is told of the past differ from bike to bike, and keep no rows apart. */
export function makeTable(what: Survey, found: readonly Found[], notApart: readonly string[]): Table {
  const seen = gathered(what, found);
  const names = outcomesOf(seen);
  const apart = new Set(notApart);
  const kept: Gathered[] = [];
  for (const { cause, weight, looks, counts } of seen) {
    // What no caller ever has, no answer can make likely.
    if (weight === 0) continue;
    const row: Gathered = { cause, weight, looks, shows: sharesOf(counts, names) };
    const same = kept.find((other) => other.cause === cause && alike(row.shows, other.shows, apart));
    if (same) join(same, row, names);
    else kept.push(row);
  }
  const total = kept.reduce((sum, { weight }) => sum + weight, 0);
  const rows = kept.map(
    ({ cause, weight, looks, shows }): Row => ({
      cause,
      weight: (100 * weight) / total,
      looks,
      shows: Object.fromEntries(shows),
    }),
  );
  return { steps: names, rows };
}
