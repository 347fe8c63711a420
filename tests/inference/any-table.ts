import fc from 'fast-check';
import type { Knowledge, Observation, Repaired } from '../../src/inference/posterior.ts';
import { type Row, type Table, UNTHOUGHT_SOUND } from '../../src/inference/table.ts';

const shared = (parts: readonly number[]): readonly number[] => {
  const total = parts.reduce((sum, part) => sum + part, 0);
  return total === 0 ? parts.map(() => 1 / parts.length) : parts.map((part) => part / total);
};

/** Shares of so many outcomes, often all in one, sometimes with outcomes that never come. */
const anyShares = (outcomes: number): fc.Arbitrary<readonly number[]> =>
  fc.oneof(
    fc.array(fc.integer({ min: 0, max: 9 }), { minLength: outcomes, maxLength: outcomes }).map(shared),
    fc.nat({ max: outcomes - 1 }).map((one) => Array.from({ length: outcomes }, (_, o) => (o === one ? 1 : 0))),
  );

const anyRows = (
  cause: string,
  steps: Table['steps'],
  weights: readonly [number, number],
): fc.Arbitrary<readonly Row[]> =>
  fc.array(
    fc.record({
      cause: fc.constant(cause),
      weight: fc.double({ min: weights[0], max: weights[1], noNaN: true }),
      looks: fc.integer({ min: 1, max: 1000 }),
      shows: fc.record(
        Object.fromEntries(Object.entries(steps).map(([step, { length }]) => [step, anyShares(length)])),
        { requiredKeys: [], noNullPrototype: true },
      ) as fc.Arbitrary<Row['shows']>,
    }),
    { minLength: 1, maxLength: 3 },
  );

/** 2 to 8 causes in 1 to 3 rows each, 1 to 6 steps of 2 to 4 outcomes, some of them not looked at; sound bikes as well. */
export const anyTable: fc.Arbitrary<Table> = fc
  .record({
    causes: fc.integer({ min: 2, max: 8 }),
    outcomes: fc.array(fc.integer({ min: 2, max: 4 }), { minLength: 1, maxLength: 6 }),
  })
  .chain(({ causes, outcomes }) => {
    const steps = Object.fromEntries(
      outcomes.map((length, s) => [`step-${s}`, Array.from({ length }, (_, o) => `outcome-${o}`)]),
    );
    return fc.record({
      steps: fc.constant(steps),
      rows: fc
        .tuple(
          ...Array.from({ length: causes }, (_, c) => anyRows(`cause-${c}`, steps, [0.01, 10])),
          anyRows(UNTHOUGHT_SOUND, steps, [1, 1]),
        )
        .map((rows) => rows.flat()),
    });
  });

/** An answer to one of the steps, under one of three conditions, now and then a step or an outcome that nobody knows. */
export const anyAnswer = ({ steps }: Table): fc.Arbitrary<Observation> =>
  fc.constantFrom(...Object.keys(steps), 'unknown-step').chain((step) =>
    fc.record(
      {
        step: fc.constant(step),
        outcome: fc.constantFrom(...(steps[step] ?? []), 'unknown-outcome'),
        group: fc.constantFrom('meter', 'ear', 'told'),
        trust: fc.constantFrom('seen', 'seen', 'told', 'build'),
        confirmed: fc.boolean(),
      },
      { requiredKeys: ['step', 'outcome', 'group', 'trust'], noNullPrototype: true },
    ),
  );

export const anyRepair = ({ rows }: Table): fc.Arbitrary<Repaired> =>
  fc.record({
    cause: fc.constantFrom(...rows.map(({ cause }) => cause)),
    failsRatio: fc.constantFrom(0.02, 0.1, 0.15, 0.3),
    result: fc.constantFrom('still', 'better'),
  });

/** Answers to different steps, and up to two repairs. */
export const anyKnowledge = (table: Table): fc.Arbitrary<Knowledge> =>
  fc.record({
    observations: fc.uniqueArray(anyAnswer(table), { maxLength: 6, selector: ({ step }) => step }),
    repairs: fc.array(anyRepair(table), { maxLength: 2 }),
  });

/** A table, and what is known in it. */
export const anyCase: fc.Arbitrary<{ readonly table: Table; readonly known: Knowledge }> = anyTable.chain((table) =>
  fc.record({ table: fc.constant(table), known: anyKnowledge(table) }),
);
