import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { posterior, shareOf } from '../../src/inference/posterior.ts';
import {
  compile,
  isUnthought,
  type Table,
  UNTHOUGHT_ODD,
  UNTHOUGHT_SOUND,
  withoutCauses,
} from '../../src/inference/table.ts';
import { expectClose } from '../compute/close.ts';
import { anyTable } from './any-table.ts';
import { ENDLESS_LOOKS, NOTHING_KNOWN, row, seen } from './tables.ts';

/* Made up for the test: two causes, the second on two kinds of build, of which one was never looked at with a meter. */
const pump: Table = {
  steps: { hum: ['hums', 'silent'], volts: ['none', 'low', 'full'] },
  rows: [
    row('fuse', { hum: [0, 1], volts: [1, 0, 0] }, 6, 7),
    row('motor', { hum: [0.5, 0.5], volts: [0, 0.25, 0.75] }, 3, 7),
    row('motor', { hum: [1, 0] }, 1, 17),
    row(UNTHOUGHT_SOUND, { hum: [1, 0], volts: [0, 0, 1] }, 5, 7),
  ],
};

const chance = (table: Table, step: string, outcome: string, r: number) => {
  const { outcomes, byRow } = compile(table).steps.get(step) ?? expect.unreachable();
  return byRow[outcomes.get(outcome) ?? expect.unreachable()]?.[r];
};

describe('a table made ready', () => {
  // P = (n·p + m·P₀) / (n + m): Mitchell, Machine Learning (1997), eq. 6.22, m-estimate of probability. By hand with m = 1
  // for what is known of a cause, and with m = 3 for each of its rows, what is known of the cause as P₀.
  it('mixes one look at an average bike into a cause, and three at an average bike with that cause into its rows', () => {
    // All bikes of the complaint: (6 · 0 + 3 · 0.5 + 1 · 1) / 10 = 0.25 hum. Those with the motor: (3 · 0.5 + 1 · 1) / 4.
    const [fuse, motor] = [(7 * 0 + 0.25) / 8, (24 * 0.625 + 0.25) / 25];
    expectClose(chance(pump, 'hum', 'hums', 0) ?? 0, (7 * 0 + 3 * fuse) / 10);
    expectClose(chance(pump, 'hum', 'hums', 1) ?? 0, (7 * 0.5 + 3 * motor) / 10);
    expectClose(chance(pump, 'hum', 'hums', 2) ?? 0, (17 * 1 + 3 * motor) / 20);
  });
  it('lets a kind of build that was looked at once show what the cause shows on all others', () => {
    const rows = [
      row('fuse', { hum: [0, 1] }, 9, 99),
      row('fuse', { hum: [0, 1] }, 1, 1),
      row('motor', { hum: [1, 0] }, 10, 99),
    ];
    expect(chance({ steps: { hum: ['hums', 'silent'] }, rows }, 'hum', 'silent', 1)).toBeGreaterThan(0.99);
  });
  it('gives a row that was never looked at the mean over those that were', () => {
    // (6 · 1 + 3 · 0) / 9, (3 · 0.25) / 9, (3 · 0.75) / 9
    expectClose(chance(pump, 'volts', 'none', 2) ?? 0, 2 / 3);
    expectClose(chance(pump, 'volts', 'low', 2) ?? 0, 1 / 12);
    expectClose(chance(pump, 'volts', 'full', 2) ?? 0, 1 / 4);
  });
  it('has two rows for what nobody thought of, at 3 % of the named causes each, whatever weight the table gives them', () => {
    const model = compile(pump);
    const believed = posterior(model, NOTHING_KNOWN);
    expectClose(shareOf(model, believed, UNTHOUGHT_SOUND), 0.03 / 1.06);
    expectClose(shareOf(model, believed, UNTHOUGHT_ODD), 0.03 / 1.06);
    expectClose(shareOf(model, believed, 'fuse'), 0.6 / 1.06);
  });
  // Bikes of the complaint: 0.75 silent, 2/3 without volts. The sound one hums, with full volts.
  it('lets the odd one of them show half what a sound bike shows, and half what bikes of the complaint do', () => {
    const odd = compile(pump).causeOf.length - 1;
    expectClose(chance(pump, 'hum', 'silent', odd) ?? 0, (0 + 0.75) / 2);
    expectClose(chance(pump, 'volts', 'none', odd) ?? 0, (0 + 2 / 3) / 2);
    expectClose(chance(pump, 'volts', 'full', odd) ?? 0, (1 + 1 / 4) / 2);
  });
  it('lets it show what bikes of the complaint do where no sound bike was looked at', () => {
    const without = { ...pump, rows: pump.rows.filter(({ cause }) => cause !== UNTHOUGHT_SOUND) };
    expectClose(chance(without, 'hum', 'silent', compile(without).causeOf.length - 1) ?? 0, 0.75);
  });
  it('does not let sound bikes into the mean over the bikes of the complaint', () => {
    const { rows } = pump;
    const without = { ...pump, rows: rows.filter(({ cause }) => cause !== UNTHOUGHT_SOUND) };
    expect(chance(without, 'hum', 'hums', 0)).toBe(chance(pump, 'hum', 'hums', 0));
  });
  it('is made once', () => {
    expect(compile(pump)).toBe(compile(pump));
  });
  it('has chances that add up to 1 in every row, and a prior that does', () => {
    fc.assert(
      fc.property(anyTable, (table) => {
        const { steps, prior, causeOf } = compile(table);
        expectClose(
          prior.reduce((sum, share) => sum + share, 0),
          1,
        );
        for (const { byRow } of steps.values())
          for (const r of causeOf.keys())
            expectClose(
              byRow.reduce((sum, own) => sum + (own[r] as number), 0),
              1,
            );
      }),
    );
  });
});

describe('a table without some causes', () => {
  const named = ({ rows }: Table) =>
    [...new Set(rows.map(({ cause }) => cause))].filter((cause) => !isUnthought(cause));

  it('knows them no more, and leaves the odds of the others as they were before any answer', () => {
    fc.assert(
      fc.property(
        anyTable.chain((table) => fc.tuple(fc.constant(table), fc.constantFrom(...named(table)))),
        ([table, left]) => {
          const [all, fewer] = [compile(table), compile(withoutCauses(table, [left]))];
          expect(fewer.causes).toEqual(all.causes.filter((cause) => cause !== left));
          const [before, after] = [posterior(all, NOTHING_KNOWN), posterior(fewer, NOTHING_KNOWN)];
          const [first = '', ...others] = named(table).filter((cause) => cause !== left);
          for (const other of others)
            expectClose(
              shareOf(fewer, after, other) / shareOf(fewer, after, first),
              shareOf(all, before, other) / shareOf(all, before, first),
            );
        },
      ),
    );
  });
  it('leaves them after an answer too, where each was looked at often enough to need no average', () => {
    const steps = { lamp: ['on', 'dim', 'off'] };
    const rows = [
      row('fuse', { lamp: [0.1, 0.1, 0.8] }, 2),
      row('lead', { lamp: [0.2, 0.7, 0.1] }, 3),
      row('earth', { lamp: [0.3, 0.3, 0.4] }, 5),
    ];
    const [all, fewer] = [compile({ steps, rows }), compile(withoutCauses({ steps, rows }, ['earth']))];
    const known = { observations: [seen('lamp', 'off')], repairs: [] };
    const [before, after] = [posterior(all, known), posterior(fewer, known)];
    expectClose(
      shareOf(fewer, after, 'fuse') / shareOf(fewer, after, 'lead'),
      shareOf(all, before, 'fuse') / shareOf(all, before, 'lead'),
      10 / ENDLESS_LOOKS,
    );
  });
});
