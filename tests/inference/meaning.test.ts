import { describe, expect, it } from 'vitest';
import { meaningsOf } from '../../src/inference/meaning.ts';
import { posterior } from '../../src/inference/posterior.ts';
import { compile, type Row, type Table } from '../../src/inference/table.ts';

const row = (id: string, weight: number, shows: Row['shows']): Row => ({ cause: id, weight, looks: 1e6, shows });

/*
 * A cookie out of one of two bowls: 30 of 40 in the first are vanilla, 20 of 40 in the second. A vanilla one is from the
 * first with 3/5. Source: the worked example that textbooks begin with, Downey, Think Bayes, chapter 1, from memory.
 */
const BOWLS: Table = {
  steps: { cookie: ['vanilla', 'chocolate'] },
  rows: [row('first', 1, { cookie: [0.75, 0.25] }), row('second', 1, { cookie: [0.5, 0.5] })],
};
const model = compile(BOWLS);
const believed = posterior(model, { observations: [], repairs: [] });

describe('what an outcome would mean', () => {
  const meanings = meaningsOf(model, believed, 'cookie');
  it('is Bayes’ rule: three in five, where it was one in two', () => {
    const [vanilla] = meanings;
    expect(vanilla?.outcome).toBe('vanilla');
    expect(vanilla?.chance).toBeCloseTo(5 / 8, 2);
    expect(vanilla?.raises).toMatchObject({ cause: 'first' });
    // Two rows for what nobody thought of take a share of three in a hundred each.
    const times = ({ raises }: (typeof meanings)[number]) => (raises?.to ?? 0) / (raises?.from ?? 1);
    expect(meanings.map(times)[0]).toBeCloseTo(3 / 5 / (1 / 2), 1);
    expect(meanings.map(times)[1]).toBeCloseTo(2 / 3 / (1 / 2), 1);
  });
  it('leaves the shares as they are on the whole: each outcome as often as it is seen', () => {
    expect(meanings.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 6);
  });
  it('is nothing of a step that the table does not know', () =>
    expect(meaningsOf(model, believed, 'cake')).toEqual([]));
});
