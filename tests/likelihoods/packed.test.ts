import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { elsewhere } from '../../machines/elsewhere.ts';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import { CAUSES } from '../../src/causes/all.ts';
import { isUnthought, UNTHOUGHT_SOUND } from '../../src/inference/table.ts';
import { pack, unpack } from '../../src/likelihoods/packed.ts';
import { anyTable } from '../inference/any-table.ts';

/** A share is stored in whole hundredths, so it comes back half a hundredth off at most. */
const HALF = 0.005 + 1e-12;

describe('a packed table', () => {
  it('comes back with the same steps, outcomes and rows, each share and weight to a hundredth', () => {
    fc.assert(
      fc.property(anyTable, (table) => {
        const back = unpack(JSON.parse(JSON.stringify(pack(table))));
        expect(back.steps).toEqual(table.steps);
        expect(back.rows.map(({ cause, looks }) => [cause, looks])).toEqual(
          table.rows.map(({ cause, looks }) => [cause, looks]),
        );
        for (const [i, { weight, shows }] of table.rows.entries()) {
          const row = back.rows[i] ?? expect.fail('a row is lost');
          expect(Math.abs(row.weight - weight)).toBeLessThanOrEqual(HALF);
          expect(Object.keys(row.shows).toSorted()).toEqual(Object.keys(shows).toSorted());
          for (const [step, shares] of Object.entries(shows))
            for (const [o, share] of shares.entries())
              expect(Math.abs((row.shows[step]?.[o] ?? Number.NaN) - share)).toBeLessThanOrEqual(HALF);
        }
      }),
    );
  });
  it('does not change once it was packed', () => {
    fc.assert(
      fc.property(anyTable, (table) => {
        const once = pack(table);
        expect(pack(unpack(once))).toEqual(once);
      }),
    );
  });
});

const stored = await Promise.all(
  FAULT_FLOWS.map(async ([id, { load, late }]) => [id, { flow: await load(), late: await late() }] as const),
);

describe.each(stored)('what %s fetches late', (_, { flow, late: { table, causes } }) => {
  const named = [...new Set(table.rows.map(({ cause }) => cause))];

  it('names only steps that the flow has, and only outcomes that they have', () => {
    for (const [id, outcomes] of Object.entries(table.steps)) {
      const step = flow.steps.get(id) ?? expect.fail(`${flow.id} has no step ${id}`);
      expect(Object.keys(step.outcomes)).toEqual(expect.arrayContaining([...outcomes]));
      expect(new Set(outcomes).size).toBe(outcomes.length);
    }
    for (const { shows } of table.rows)
      for (const [step, shares] of Object.entries(shows)) expect(shares).toHaveLength(table.steps[step]?.length ?? 0);
  });
  it('says something of every step that is asked for its own sake', () => {
    const asked = [...flow.steps.values()].filter(({ place }) => place !== 'tools').map(({ id }) => id);
    expect(asked.filter((id) => !(id in table.steps))).toEqual([]);
  });
  it('knows exactly the causes of the flow, of other flows those that it hands over to, and the sound bike', () => {
    // A flow that is gone on to only because the complaint is another one has no cause of this complaint.
    const others = flow.handsOver.map((to) => elsewhere(to.flow)).filter((id) => named.includes(id));
    const all = [...flow.causes, ...others, UNTHOUGHT_SOUND];
    expect(named.toSorted()).toEqual(all.toSorted());
    expect(Object.keys(causes).toSorted()).toEqual(flow.causes.toSorted());
    expect(named.filter(isUnthought)).toEqual([UNTHOUGHT_SOUND]);
  });
  it('gives each cause a weight, and shares that add up to one', () => {
    for (const cause of named)
      expect(
        table.rows.filter((row) => row.cause === cause).reduce((sum, { weight }) => sum + weight, 0),
        cause,
      ).toBeGreaterThan(0);
    for (const { cause, shows, looks } of table.rows) {
      expect(looks, cause).toBeGreaterThan(0);
      for (const [step, shares] of Object.entries(shows)) {
        // Each of them was rounded to a hundredth.
        const sum = shares.reduce((so, share) => so + share, 0);
        expect(Math.abs(sum - 1), `${cause} at ${step}`).toBeLessThanOrEqual(shares.length * HALF);
      }
    }
  });
  it('holds the causes themselves, not copies', () => {
    for (const [id, cause] of Object.entries(causes)) expect(CAUSES.find((one) => one.id === id)).toBe(cause);
  });
});
