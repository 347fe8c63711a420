import type { Row, Table } from '../inference/table.ts';

/**
 * A table as it is stored. Shares are whole hundredths. Many rows show the same at a step, so each step keeps its distinct
 * shares once, and a row names them by number; −1 where it was never looked at.
 */
export interface PackedTable {
  readonly causes: readonly string[];
  /** By step: the names of its outcomes, and each distinct way in which they are shared. */
  readonly steps: Readonly<
    Record<string, { readonly outcomes: readonly string[]; readonly shares: readonly (readonly number[])[] }>
  >;
  /** Cause, weight in hundredths, looks, and then for each step the number of its shares. */
  readonly rows: readonly (readonly number[])[];
}

const HUNDREDTHS = 100;

export function pack({ steps, rows }: Table): PackedTable {
  const causes = [...new Set(rows.map(({ cause }) => cause))];
  const ids = Object.keys(steps);
  const shares = new Map(ids.map((id) => [id, [] as (readonly number[])[]]));
  const numberOf = (id: string, own: readonly number[] | undefined): number => {
    if (!own) return -1;
    const rounded = own.map((share) => Math.round(HUNDREDTHS * share));
    const known = shares.get(id) ?? [];
    const at = known.findIndex((other) => other.join() === rounded.join());
    if (at >= 0) return at;
    known.push(rounded);
    return known.length - 1;
  };
  const packed = rows.map(({ cause, weight, looks, shows }) => [
    causes.indexOf(cause),
    Math.round(HUNDREDTHS * weight),
    looks,
    ...ids.map((id) => numberOf(id, shows[id])),
  ]);
  return {
    causes,
    steps: Object.fromEntries(ids.map((id) => [id, { outcomes: steps[id] ?? [], shares: shares.get(id) ?? [] }])),
    rows: packed,
  };
}

export function unpack({ causes, steps, rows }: PackedTable): Table {
  const ids = Object.keys(steps);
  return {
    steps: Object.fromEntries(ids.map((id) => [id, steps[id]?.outcomes ?? []])),
    rows: rows.map(([cause = 0, weight = 0, looks = 0, ...numbers]): Row => {
      const shows = ids.flatMap((id, i) => {
        const own = steps[id]?.shares[numbers[i] ?? -1];
        return own ? [[id, own.map((share) => share / HUNDREDTHS)] as const] : [];
      });
      return { cause: causes[cause] ?? '', weight: weight / HUNDREDTHS, looks, shows: Object.fromEntries(shows) };
    }),
  };
}
