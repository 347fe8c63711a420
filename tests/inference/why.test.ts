import { describe, expect, it } from 'vitest';
import { posterior, shareOf } from '../../src/inference/posterior.ts';
import { compile, type Table, UNTHOUGHT_SOUND } from '../../src/inference/table.ts';
import { separates } from '../../src/inference/why.ts';
import { knowing, NOTHING_KNOWN, rightOrWrong, row, seen } from './tables.ts';

const tells = (table: Table, step: string, known = NOTHING_KNOWN) => {
  const model = compile(table);
  return separates(model, posterior(model, known), step);
};

describe('what a step tells apart', () => {
  it('are the causes by the outcome that each gives most often, the likeliest first', () => {
    const table: Table = {
      steps: { lamp: ['on', 'dim', 'off'] },
      rows: [
        row('lead', { lamp: [0.2, 0.7, 0.1] }, 2),
        row('fuse', { lamp: [0, 0, 1] }, 4),
        row('earth', { lamp: [0.3, 0.6, 0.1] }, 1),
        row('pump', { lamp: [0.8, 0.1, 0.1] }, 3),
      ],
    };
    expect(tells(table, 'lamp')).toEqual([
      { outcome: 'off', causes: ['fuse'] },
      { outcome: 'on', causes: ['pump'] },
      { outcome: 'dim', causes: ['lead', 'earth'] },
    ]);
  });
  it('goes by the builds of a cause as they are believed now', () => {
    const table: Table = {
      steps: { kind: ['old', 'new'], lamp: ['on', 'off'] },
      rows: [
        row('fuse', { kind: [1, 0], lamp: [1, 0] }, 3),
        row('fuse', { kind: [0, 1], lamp: [0, 1] }, 2),
        row('lead', { kind: [0.5, 0.5], lamp: [0, 1] }, 5),
      ],
    };
    expect(tells(table, 'lamp')).toHaveLength(2);
    expect(tells(table, 'lamp', knowing([seen('kind', 'new', { trust: 'build' })]))).toEqual([
      { outcome: 'off', causes: ['lead', 'fuse'] },
    ]);
  });
  it('does not name whoever is hardly likely, nor what nobody thought of', () => {
    const table: Table = {
      steps: { lamp: ['on', 'off'] },
      rows: [
        row('fuse', { lamp: [0, 1] }, 97),
        row('lead', { lamp: [1, 0] }, 2),
        row(UNTHOUGHT_SOUND, { lamp: [1, 0] }),
      ],
    };
    expect(tells(table, 'lamp')).toEqual([{ outcome: 'off', causes: ['fuse'] }]);
    const lit = knowing([seen('lamp', 'on')]);
    const model = compile(table);
    expect(shareOf(model, posterior(model, lit), UNTHOUGHT_SOUND)).toBeGreaterThan(0.3);
    expect(tells(table, 'lamp', lit).flatMap(({ causes }) => causes)).toEqual(['lead', 'fuse']);
  });
  it('names six causes at most', () => {
    const eight = rightOrWrong(
      ['x'],
      Object.fromEntries(['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map((id) => [id, ['x']])),
    );
    expect(tells(eight, 'x').flatMap(({ causes }) => causes)).toHaveLength(6);
  });
  it('is nothing for a step that the table does not know', () => {
    expect(tells(rightOrWrong(['x'], { a: ['x'] }), 'y')).toEqual([]);
  });
});
