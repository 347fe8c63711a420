import { describe, expect, it } from 'vitest';
import { doubts, hangsOn, misfitOf, mostlyShows } from '../../src/inference/doubt.ts';
import { type Knowledge, posterior, ranked } from '../../src/inference/posterior.ts';
import { compile, type Table } from '../../src/inference/table.ts';
import { knowing, NOTHING_KNOWN, rightOrWrong, row, seen } from './tables.ts';

/* Made up for the test: `a` is wrong at three places, the others at one. */
const places = rightOrWrong(['a1', 'a2', 'a3', 'b1', 'c1'], { a: ['a1', 'a2', 'a3'], b: ['b1'], c: ['c1'] });
const rareB: Table = {
  ...places,
  rows: places.rows.map((one) => (one.cause === 'b' ? { ...one, weight: 0.3 } : one)),
};
const doubted = (known: Knowledge, table: Table = places) => {
  const model = compile(table);
  return doubts(model, known, posterior(model, known));
};

describe('the answers to be given once more', () => {
  it('are none while they agree and none decides alone', () => {
    expect(doubted(NOTHING_KNOWN)).toEqual([]);
    expect(doubted(knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]))).toEqual([]);
  });
  it('begin with one that the likeliest cause hardly ever gives', () => {
    const known = knowing(['a1', 'a2', 'a3', 'b1'].map((step) => seen(step, 'wrong')));
    expect(doubted(known)).toEqual([{ step: 'b1', because: 'misfit' }]);
  });
  it('have first what it gives least', () => {
    const table: Table = {
      steps: { lamp: ['on', 'off'], hum: ['hums', 'silent'], smell: ['burnt', 'none'] },
      rows: [
        row('fuse', { lamp: [0.04, 0.96], hum: [0.01, 0.99], smell: [0.9, 0.1] }, 1000),
        row('lead', { lamp: [0.5, 0.5], hum: [0.5, 0.5], smell: [0.1, 0.9] }),
      ],
    };
    expect(doubted(knowing([seen('lamp', 'on'), seen('hum', 'hums'), seen('smell', 'burnt')]), table)).toEqual([
      { step: 'hum', because: 'misfit' },
      { step: 'lamp', because: 'misfit' },
    ]);
  });
  it('have one without which the likeliest cause would have less than half', () => {
    const weighing = (weight: number): Table => ({
      ...places,
      rows: places.rows.map((one) => (one.cause === 'b' ? { ...one, weight } : one)),
    });
    // Before any answer it has 2.5 / (4.5 · 1.06) = 0.52, and 2 / (4 · 1.06) = 0.47, although it leads then, too.
    expect(doubted(knowing([seen('b1', 'wrong')]), weighing(2.5))).toEqual([]);
    expect(doubted(knowing([seen('b1', 'wrong')]), weighing(2))).toEqual([{ step: 'b1', because: 'pivotal' }]);
    expect(doubted(knowing([seen('b1', 'wrong')]), rareB)).toEqual([{ step: 'b1', because: 'pivotal' }]);
  });
  it('have the more telling of two that all hangs on first, and what does not fit before both', () => {
    const table: Table = {
      steps: { lamp: ['on', 'off'], volts: ['full', 'none'], hum: ['hums', 'silent'] },
      rows: [
        row('fuse', { lamp: [0, 1], volts: [0, 1], hum: [1, 0] }, 1),
        row('lead', { lamp: [0.9, 0.1], volts: [0.98, 0.02], hum: [0.5, 0.5] }, 100),
      ],
    };
    const known = knowing([seen('lamp', 'off'), seen('volts', 'none')]);
    expect(doubted(known, table)).toEqual([
      { step: 'volts', because: 'pivotal' },
      { step: 'lamp', because: 'pivotal' },
    ]);
    // A fuse never silences the hum, so the lead leads now; it leaves no volts in one case of fifty.
    const clash = knowing([...known.observations, seen('hum', 'silent')]);
    const model = compile(table);
    expect(ranked(model, posterior(model, clash))[0]?.cause).toBe('lead');
    expect(doubted(clash, table)).toEqual([
      { step: 'volts', because: 'misfit' },
      { step: 'hum', because: 'pivotal' },
    ]);
  });
  it('have each step once: one that does not fit and that all hangs on does not fit', () => {
    const codes = Array.from({ length: 10 }, (_, o) => `code-${o}`);
    const table: Table = {
      steps: { code: codes },
      rows: [
        row('board', { code: codes.map((_, o) => (o === 9 ? 0.04 : o === 0 ? 0.96 : 0)) }, 1),
        row('lead', { code: codes.map((_, o) => (o === 0 ? 1 : 0)) }, 10),
      ],
    };
    expect(doubted(knowing([seen('code', 'code-9')]), table)).toEqual([{ step: 'code', because: 'misfit' }]);
  });
  it('leave out what was confirmed', () => {
    const given = ['a1', 'a2', 'a3'].map((step) => seen(step, 'wrong'));
    expect(doubted(knowing([...given, seen('b1', 'wrong', { confirmed: true })]))).toEqual([]);
  });
  it('leave out what is told of the past: asking again brings the same story', () => {
    const given = ['a1', 'a2', 'a3'].map((step) => seen(step, 'wrong'));
    expect(doubted(knowing([...given, seen('b1', 'wrong', { trust: 'told' })]))).toEqual([]);
    expect(doubted(knowing([seen('b1', 'wrong', { trust: 'told' })]), rareB)).toEqual([]);
  });
  it('have what is said of the build if it does not fit, and not because all hangs on it', () => {
    const given = ['a1', 'a2', 'a3'].map((step) => seen(step, 'wrong'));
    expect(doubted(knowing([...given, seen('b1', 'wrong', { trust: 'build' })]))).toEqual([
      { step: 'b1', because: 'misfit' },
    ]);
    expect(doubted(knowing([seen('b1', 'wrong', { trust: 'build' })]), rareB)).toEqual([]);
  });
  it('leave out those of which the table says nothing', () => {
    const given = ['a1', 'a2', 'a3'].map((step) => seen(step, 'wrong'));
    expect(doubted(knowing([...given, seen('b1', 'loose'), seen('colour', 'red')]))).toEqual([]);
    const even = rightOrWrong(['x'], Object.fromEntries(['a', 'b', 'c', 'd', 'e'].map((id) => [id, ['x']])));
    expect(doubted(knowing([seen('x', 'loose'), seen('colour', 'red')]), even)).toEqual([]);
  });
});

describe('the answers that a cause hangs on', () => {
  const of = (known: Knowledge) => hangsOn(compile(places), known, 'a').map(({ step }) => step);
  it('are none while any one of them can be left out', () => {
    expect(of(knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]))).toEqual([]);
  });
  it('hold one that was given twice, which is no second witness', () => {
    const twice = { ...seen('a1', 'wrong'), confirmed: true };
    expect(doubted(knowing([twice]))).toEqual([]);
    expect(of(knowing([twice]))).toEqual(['a1']);
  });
});

describe('what a cause would rather show', () => {
  // Made up for the test: a torn cone is one speaker of four, and each corner is a row of its own.
  const corners = ['front-left', 'front-right', 'rear-left', 'rear-right'] as const;
  const at = (corner: number, pair: number): readonly number[] => [
    ...corners.map((_, i) => Number(i === corner)),
    pair,
  ];
  const table: Table = {
    steps: { where: [...corners, 'front pair'], fades: ['front', 'rear'], volts: ['full', 'none'] },
    rows: [
      ...corners.map((_, i) =>
        row('cone', { where: at(i, 0), fades: i < 2 ? [1, 0] : [0, 1], volts: [1, 0] }, i === 2 ? 1.2 : 1),
      ),
      row('head unit', { where: at(-1, 1), fades: [1, 0], volts: [0, 1] }, 0.5),
    ],
  };
  const model = compile(table);
  const where = seen('where', 'front pair');
  it('is nothing where no outcome is usual: the mean over all corners is none of them', () => {
    const known = knowing([where, seen('volts', 'full')]);
    expect(mostlyShows(model, known, 'cone', 'where')).toBeUndefined();
    expect(mostlyShows(model, known, 'cone', 'volts')).toBe('full');
  });
  it('comes from the rows that the other answers leave, and not from the one in doubt', () => {
    const known = knowing([where, seen('fades', 'rear')]);
    expect(mostlyShows(compile({ ...table, rows: table.rows.filter((_, i) => i !== 3) }), known, 'cone', 'where')).toBe(
      'rear-left',
    );
    expect(mostlyShows(model, knowing([where, seen('fades', 'front')]), 'cone', 'where')).toBeUndefined();
  });
  it('is asked of the likeliest cause that hardly ever gives the answer', () => {
    const known = knowing([where, seen('volts', 'full')]);
    expect(misfitOf(model, model, known, where)).toBe('cone');
    expect(misfitOf(model, model, known, seen('volts', 'full'))).toBeUndefined();
  });
});
