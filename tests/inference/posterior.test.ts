import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chanceOf,
  groupsOf,
  type Knowledge,
  type Observation,
  posterior,
  ranked,
  says,
  shareOf,
} from '../../src/inference/posterior.ts';
import { compile, isUnthought, type Model, type Table } from '../../src/inference/table.ts';
import { expectClose } from '../compute/close.ts';
import { anyCase, anyRepair, anyTable } from './any-table.ts';
import { amongNamed, knowing, NO_SLIPS, NOTHING_KNOWN, row, seen } from './tables.ts';

/** The share of a cause after one answer that is never wrong, given that it is one of those in the table. */
const afterOne = (table: Table, cause: string, step: string, outcome: string): number => {
  const model = compile(table);
  return shareOf(model, amongNamed(model, posterior(model, knowing([seen(step, outcome)]), NO_SLIPS)), cause);
};

describe('the posterior without slips is that of the textbooks', () => {
  // Rice, Mathematical Statistics and Data Analysis, section 1.5, example E: calcified arteries seen by fluoroscopy, and
  // coronary artery disease, from Diamond and Forrester (1979). Printed to two digits.
  const arteries = (diseased: number): Table => ({
    steps: { calcified: ['0', '1', '2', '3'] },
    rows: [
      row('diseased', { calcified: [0.42, 0.24, 0.2, 0.15] }, diseased),
      row('free', { calcified: [0.96, 0.02, 0.02, 0] }, 1 - diseased),
    ],
  });
  it('for a man of 30 to 39 with chest pain that is not anginal, of whom 5 % are diseased (Rice, example 1.5 E)', () => {
    expect(afterOne(arteries(0.05), 'diseased', 'calcified', '0')).toBeCloseTo(0.02, 2);
    expect(afterOne(arteries(0.05), 'diseased', 'calcified', '1')).toBeCloseTo(0.39, 2);
  });
  it('for a man of 50 to 59 with typical angina, of whom 92 % are (the same example, these from memory)', () => {
    expect(afterOne(arteries(0.92), 'diseased', 'calcified', '0')).toBeCloseTo(0.83, 2);
    expect(afterOne(arteries(0.92), 'diseased', 'calcified', '1')).toBeCloseTo(0.99, 2);
  });

  it('for three diseases that are equally likely and a test that comes out positive in 8, 6 and 4 of 10 (Grinstead and Snell, Introduction to Probability, exercise 4.1.18: 4/9, 1/3, 2/9)', () => {
    const table = {
      steps: { test: ['+', '−'] },
      rows: [row('d1', { test: [0.8, 0.2] }), row('d2', { test: [0.6, 0.4] }), row('d3', { test: [0.4, 0.6] })],
    };
    expect(afterOne(table, 'd1', 'test', '+')).toBeCloseTo(4 / 9, 9);
    expect(afterOne(table, 'd2', 'test', '+')).toBeCloseTo(1 / 3, 9);
    expect(afterOne(table, 'd3', 'test', '+')).toBeCloseTo(2 / 9, 9);
  });
  it('for 10,000 people with one of three diseases, counted by the outcome of two tests (Grinstead and Snell, example 4.16, from memory)', () => {
    const counted = (cause: string, all: number, counts: readonly number[]) =>
      row(cause, { tests: counts.map((count) => count / all) }, all);
    const table = {
      steps: { tests: ['++', '+−', '−+', '−−'] },
      rows: [
        counted('d1', 3215, [2110, 301, 704, 100]),
        counted('d2', 2125, [396, 132, 1187, 410]),
        counted('d3', 4660, [510, 3568, 73, 509]),
      ],
    };
    expect(['d1', 'd2', 'd3'].map((cause) => afterOne(table, cause, 'tests', '++').toFixed(3))).toEqual([
      '0.700',
      '0.131',
      '0.169',
    ]);
    expect(['d1', 'd2', 'd3'].map((cause) => afterOne(table, cause, 'tests', '+−').toFixed(3))).toEqual([
      '0.075',
      '0.033',
      '0.892',
    ]);
  });
});

/* Made up for the test: the fuse puts the lamp out for certain, the lead seldom. */
const lamp: Table = {
  steps: { lamp: ['on', 'off'], hum: ['hums', 'silent'], fitted: ['wire', 'signal'] },
  rows: [
    row('fuse', { lamp: [0, 1], hum: [0, 1], fitted: [0.5, 0.5] }),
    row('lead', { lamp: [0.9, 0.1], hum: [0.5, 0.5], fitted: [0.75, 0.25] }),
  ],
};
const odds = (known: Knowledge, one = 'fuse', other = 'lead', model = compile(lamp)): number => {
  const believed = posterior(model, known);
  return shareOf(model, believed, one) / shareOf(model, believed, other);
};

describe('a slip', () => {
  // Worked by hand: (1 − 0.01)·((1 − 0.01)·P + 0.01 / 2) + 0.01 / 2, a slip showing either outcome.
  it('leaves an answer that is certain in the table less than certain', () => {
    const ofFuse = 0.99 * (0.99 * 1 + 0.005) + 0.005;
    const ofLead = 0.99 * (0.99 * 0.1 + 0.005) + 0.005;
    expectClose(odds(knowing([seen('lamp', 'off')])), ofFuse / ofLead, 1e-8);
  });
  it('is half as likely in an answer that was confirmed', () => {
    const ofFuse = 0.995 * (0.995 * 1 + 0.0025) + 0.0025;
    const ofLead = 0.995 * (0.995 * 0.1 + 0.0025) + 0.0025;
    expectClose(odds(knowing([seen('lamp', 'off', { confirmed: true })])), ofFuse / ofLead, 1e-8);
  });
  it('takes all answers of one condition with it', () => {
    const ofFuse = 0.99 * (0.99 * 1 + 0.005) ** 2 + 0.01 / 4;
    const ofLead = 0.99 * (0.99 * 0.1 + 0.005) * (0.99 * 0.5 + 0.005) + 0.01 / 4;
    const known = knowing([seen('lamp', 'off', { group: 'tone' }), seen('hum', 'silent', { group: 'tone' })]);
    expectClose(odds(known), ofFuse / ofLead, 1e-8);
  });
  it('is half as likely in all of them only if all were confirmed', () => {
    const ofFuse = 0.99 * (0.995 * 1 + 0.0025) * (0.99 * 1 + 0.005) + 0.01 / 4;
    const ofLead = 0.99 * (0.995 * 0.1 + 0.0025) * (0.99 * 0.5 + 0.005) + 0.01 / 4;
    const group = 'tone';
    const known = knowing([seen('lamp', 'off', { group, confirmed: true }), seen('hum', 'silent', { group })]);
    expectClose(odds(known), ofFuse / ofLead, 1e-8);
  });
  it('in what is said of the build shows what builds are at large', () => {
    // 0.97·P + 0.03·mean; the mean over both is 0.625 by wire.
    const ofFuse = 0.97 * 0.5 + 0.03 * 0.625;
    const ofLead = 0.97 * 0.75 + 0.03 * 0.625;
    expectClose(odds(knowing([seen('fitted', 'wire', { trust: 'build' })])), ofFuse / ofLead, 1e-8);
  });
  it('in what is told of the past is five times as likely', () => {
    const ofFuse = 0.95 * 1 + 0.025;
    const ofLead = 0.95 * 0.5 + 0.025;
    expectClose(odds(knowing([seen('hum', 'silent', { trust: 'told' })])), ofFuse / ofLead, 1e-8);
  });
});

describe('answers', () => {
  it('fail together when they share a condition; the past is one group, and each word of the build its own', () => {
    const answers = [
      seen('lamp', 'off', { group: 'told' }),
      seen('hum', 'silent', { trust: 'told', group: 'a' }),
      seen('history', 'sudden', { trust: 'told', group: 'b' }),
      seen('fitted', 'wire', { trust: 'build', group: 'a' }),
      seen('kind', 'big', { trust: 'build', group: 'a' }),
    ];
    expect(groupsOf(answers).map((group) => group.map(({ step }) => step))).toEqual([
      ['lamp'],
      ['hum', 'history'],
      ['fitted'],
      ['kind'],
    ]);
  });
  it('are heard by a table that knows the step and has a cause that gives the outcome', () => {
    const model = compile({ steps: { lamp: ['on', 'off', 'red'] }, rows: [row('fuse', { lamp: [0.5, 0.5, 0] })] });
    expect(says(model, seen('lamp', 'on'))).toBe(true);
    expect(says(model, seen('lamp', 'red'))).toBe(false);
    expect(says(model, seen('lamp', 'green'))).toBe(false);
    expect(says(model, seen('hum', 'silent'))).toBe(false);
  });
  it('have a chance under a cause that counts its builds as they are believed now', () => {
    const model = compile({
      steps: { kind: ['old', 'new'], lamp: ['on', 'off'] },
      rows: [
        row('fuse', { kind: [1, 0], lamp: [1, 0] }, 1),
        row('fuse', { kind: [0, 1], lamp: [0, 1] }, 3),
        row('lead', { kind: [0.5, 0.5], lamp: [0.5, 0.5] }, 1),
      ],
    });
    const before = posterior(model, NOTHING_KNOWN);
    expect(chanceOf(model, before, 'fuse', 'lamp', 'on')).toBeCloseTo(0.25, 8);
    const after = posterior(model, knowing([seen('kind', 'old', { trust: 'build' })]));
    expect(chanceOf(model, after, 'fuse', 'lamp', 'on')).toBeGreaterThan(0.85);
    expect(chanceOf(model, after, 'fuse', 'lamp', 'red')).toBeUndefined();
    expect(chanceOf(model, after, 'pump', 'lamp', 'on')).toBeUndefined();
  });
  it('rank the causes, the likeliest first', () => {
    const model = compile(lamp);
    const shares = ranked(model, posterior(model, knowing([seen('lamp', 'off')])));
    expect(shares[0]?.cause).toBe('fuse');
    expect(shares.map(({ shareRatio }) => shareRatio)).toEqual(
      shares.map(({ shareRatio }) => shareRatio).toSorted((a, b) => b - a),
    );
  });
});

const expectSame = (model: Model, one: Knowledge, other: Knowledge): void => {
  const [a, b] = [posterior(model, one), posterior(model, other)];
  for (const [r, share] of a.rows.entries()) expectClose(b.rows[r] as number, share);
};

describe('the posterior, in any table and after any answers', () => {
  it('does not depend on the order of answers and repairs', () => {
    fc.assert(
      fc.property(
        anyCase.chain(({ table, known }) =>
          fc.record({
            table: fc.constant(table),
            known: fc.constant(known),
            other: fc.record({
              observations: fc.shuffledSubarray([...known.observations], { minLength: known.observations.length }),
              repairs: fc.shuffledSubarray([...known.repairs], { minLength: known.repairs.length }),
            }),
          }),
        ),
        ({ table, known, other }) => expectSame(compile(table), known, other),
      ),
    );
  });
  it('makes nothing impossible and nothing certain, and adds up to 1', () => {
    fc.assert(
      fc.property(anyCase, ({ table, known }) => {
        const model = compile(table);
        const { rows, causes } = posterior(model, known);
        for (const share of [...rows, ...causes]) {
          expect(share).toBeGreaterThan(0);
          expect(share).toBeLessThan(1);
        }
        expectClose(
          rows.reduce((sum, share) => sum + share, 0),
          1,
        );
        expectClose(
          causes.reduce((sum, share) => sum + share, 0),
          1,
        );
      }),
    );
  });
  it('is the same with an answer of an unknown step, with an unknown outcome, or with one that no cause gives', () => {
    const neverGiven = (table: Table): Table => ({
      ...table,
      steps: Object.fromEntries(Object.entries(table.steps).map(([step, names]) => [step, [...names, 'never']])),
    });
    // Of a step that was looked at on no bike, all outcomes are as likely as each other.
    const lookedAt = ({ steps, rows }: Table) =>
      Object.keys(steps).filter((step) => rows.some(({ cause, shows }) => !isUnthought(cause) && shows[step]));
    fc.assert(
      fc.property(
        anyCase.chain(({ table, known }) =>
          fc.record({
            model: fc.constant(compile(neverGiven(table))),
            known: fc.constant(known),
            silent: fc.record({
              step: fc.constantFrom('unknown-step', ...lookedAt(table)),
              outcome: fc.constantFrom('unknown-outcome', 'never'),
              group: fc.constantFrom('meter', 'ear', 'alone'),
              trust: fc.constantFrom<Observation['trust']>('seen', 'told', 'build'),
              confirmed: fc.boolean(),
            }),
          }),
        ),
        ({ model, known, silent }) => {
          const observations = [...known.observations, silent];
          expect(posterior(model, { ...known, observations })).toEqual(posterior(model, known));
        },
      ),
    );
  });
  it('moves more for an answer that was confirmed, no more than for two apart, and no more for one that was not', () => {
    const answered = anyCase.chain(({ table, known }) =>
      fc.constantFrom(...Object.keys(table.steps)).chain((step) =>
        fc.record({
          model: fc.constant(compile(table)),
          known: fc.constant({ ...known, observations: known.observations.filter((one) => one.step !== step) }),
          step: fc.constant(step),
          outcome: fc.constantFrom(...(table.steps[step] ?? [])),
        }),
      ),
    );
    fc.assert(
      fc.property(answered, ({ model, known, step, outcome }) => {
        const rowsWith = (...more: readonly Observation[]) =>
          posterior(model, { ...known, observations: [...known.observations, ...more] }).rows;
        const without = rowsWith();
        const given = rowsWith(seen(step, outcome));
        const confirmed = rowsWith(seen(step, outcome, { confirmed: true }));
        expect(rowsWith(seen(step, outcome, { confirmed: false }))).toEqual(given);
        const twice = rowsWith(seen(step, outcome, { group: 'here' }), seen(step, outcome, { group: 'there' }));
        for (const r of without.keys()) {
          const moved = (rows: Float64Array) =>
            Math.abs(
              Math.log((rows[r] as number) / (rows[0] as number) / ((without[r] as number) / (without[0] as number))),
            );
          // Half a slip counts double where an outcome is all but never given: 0.1 % of the odds covers it.
          expect(moved(confirmed)).toBeGreaterThanOrEqual(moved(given) - 1e-9);
          expect(moved(confirmed)).toBeLessThanOrEqual(moved(twice) + 1e-3);
        }
      }),
    );
  });
  it('moves the odds of two causes by 10:1 at most for all that was told of the past together', () => {
    fc.assert(
      fc.property(anyCase, ({ table, known }) => {
        const model = compile(table);
        const all = {
          ...known,
          observations: known.observations.map((one): Observation => ({ ...one, trust: 'told' })),
        };
        const mixed = posterior(model, known).causes;
        const rest = posterior(model, {
          ...known,
          observations: known.observations.filter(({ trust }) => trust !== 'told'),
        }).causes;
        const told = posterior(model, all).causes;
        const nothing = posterior(model, { ...known, observations: [] }).causes;
        for (const [after, before] of [
          [mixed, rest],
          [told, nothing],
        ] as const) {
          const moved = Array.from(after, (share, c) => share / (before[c] as number));
          expect(Math.max(...moved) / Math.min(...moved)).toBeLessThanOrEqual(10 * (1 + 1e-9));
        }
      }),
    );
  });
  it('never lowers the share of a cause for an answer that it gives more often than all others', () => {
    let found = 0;
    fc.assert(
      fc.property(anyCase, ({ table, known }) => {
        const model = compile(table);
        for (const [step, { outcomes, byRow }] of model.steps) {
          const others = known.observations.filter((one) => one.step !== step);
          const before = posterior(model, { ...known, observations: others }).causes;
          for (const [outcome, o] of outcomes) {
            const own = byRow[o] as Float64Array;
            const chances = (of: (c: number) => boolean) => own.filter((_, r) => of(model.causeOf[r] as number));
            const best = model.causes.findIndex(
              (_, c) => Math.min(...chances((one) => one === c)) > Math.max(...chances((one) => one !== c)),
            );
            if (best < 0) continue;
            found++;
            for (const trust of ['seen', 'build'] as const) {
              const observations = [...others, seen(step, outcome, { trust })];
              const after = posterior(model, { ...known, observations }).causes;
              expect(after[best]).toBeGreaterThanOrEqual((before[best] as number) - 1e-12);
            }
          }
        }
      }),
    );
    expect(found).toBeGreaterThan(50);
  });
  it('never raises the share of a cause for its repair', () => {
    fc.assert(
      fc.property(
        anyCase.chain(({ table, known }) =>
          fc.record({ model: fc.constant(compile(table)), known: fc.constant(known), repair: anyRepair(table) }),
        ),
        ({ model, known, repair }) => {
          const before = shareOf(model, posterior(model, known), repair.cause);
          const after = posterior(model, { ...known, repairs: [...known.repairs, repair] });
          expect(shareOf(model, after, repair.cause)).toBeLessThanOrEqual(before + 1e-12);
        },
      ),
    );
  });
  it('takes the odds of a cause down by as much as its repair fails', () => {
    const repair = { cause: 'fuse', failsRatio: 0.1, result: 'still' } as const;
    expectClose(odds(knowing([seen('lamp', 'off')], [repair])), 0.1 * odds(knowing([seen('lamp', 'off')])));
  });
  it('gives a cause that is not in the table no share', () => {
    fc.assert(
      fc.property(anyTable, (table) => {
        const model = compile(table);
        expect(shareOf(model, posterior(model, NOTHING_KNOWN), 'cause-99')).toBe(0);
        expect(ranked(model, posterior(model, NOTHING_KNOWN)).filter(({ cause }) => isUnthought(cause))).toHaveLength(
          2,
        );
      }),
      { numRuns: 20 },
    );
  });
});
