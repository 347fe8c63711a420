import { PROVED_FLOWS } from '../case/flows.ts';
import { withoutCauses } from '../inference/table.ts';
import type { Stages } from './play.ts';

/** All flows that are proved, each with what its page fetches late. */
export async function loadStages(): Promise<Stages> {
  const loaded = PROVED_FLOWS.map(
    async ([id, { load, late }]) => [id, { flow: await load(), late: await late() }] as const,
  );
  return Object.fromEntries(await Promise.all(loaded));
}

const known = new WeakMap<Stages, Map<string, Stages>>();
/** The same with some causes that nobody thought of: no table has a row of them. */
export function leftOut(stages: Stages, causes: readonly string[]): Stages {
  const before = known.get(stages) ?? new Map<string, Stages>();
  known.set(stages, before);
  const key = causes.toSorted().join();
  const made =
    before.get(key) ??
    Object.fromEntries(
      Object.entries(stages).map(([id, { flow, late }]) => [
        id,
        { flow, late: { ...late, table: withoutCauses(late.table, causes) } },
      ]),
    );
  before.set(key, made);
  return made;
}
