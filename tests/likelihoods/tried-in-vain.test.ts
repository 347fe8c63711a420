import { describe, expect, it } from 'vitest';
import { PROVED_FLOWS } from '../../src/case/flows.ts';
import type { Row, Table } from '../../src/inference/table.ts';

/* Who does what mends a cause, without success, has not made that cause any likelier: by reason alone. */

/** Words for a trial that changed nothing, or that was not needed. */
const IN_VAIN: readonly string[] = ['no-change', 'no-effect', 'plays', 'already', 'clean', 'level', 'whole', 'smooth'];
/** A cause that a trial takes away so often is what the trial is about. */
const MOSTLY = 0.5;
const NOTHING = 0.001;

const shareOf = (rows: readonly Row[], step: string, at: number): number => {
  const looked = rows.filter(({ shows }) => shows[step]);
  const total = looked.reduce((sum, { weight }) => sum + weight, 0);
  return total === 0
    ? 0
    : looked.reduce((sum, { weight, shows }) => sum + weight * (shows[step]?.[at] ?? 0), 0) / total;
};

const tables: readonly (readonly [string, Table])[] = await Promise.all(
  PROVED_FLOWS.map(async ([id, row]) => [id, (await row.late()).table] as const),
);

describe('a trial that mends a cause, done in vain', () => {
  it.each(tables)('makes that cause no likelier, in %s', (_, { steps, rows }) => {
    for (const [step, outcomes] of Object.entries(steps)) {
      const cured = outcomes.indexOf('cured');
      if (cured < 0) continue;
      for (const cause of new Set(rows.map((row) => row.cause))) {
        const [own, others] = [rows.filter((row) => row.cause === cause), rows.filter((row) => row.cause !== cause)];
        if (shareOf(own, step, cured) < MOSTLY) continue;
        for (const [at, outcome] of outcomes.entries()) {
          if (!IN_VAIN.includes(outcome)) continue;
          const most = Math.max(NOTHING, shareOf(others, step, at));
          expect(shareOf(own, step, at), `${cause}: ${step} ${outcome}`).toBeLessThanOrEqual(most);
        }
      }
    }
  });
});
