import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { certaintyOf } from '../../src/inference/certainty.ts';
import { type Knowledge, posterior, ranked, shareOf } from '../../src/inference/posterior.ts';
import {
  compile,
  isUnthought,
  type Model,
  type Table,
  UNTHOUGHT_ODD,
  UNTHOUGHT_SOUND,
} from '../../src/inference/table.ts';
import { anyKnowledge, anyTable } from './any-table.ts';
import { knowing, NOTHING_KNOWN, rightOrWrong, row, seen } from './tables.ts';

/* Made up for the test: five causes, each wrong at two places of its own. */
const STEPS = ['a1', 'a2', 'b1', 'b2', 'c1', 'c2'];
const places = rightOrWrong(STEPS, { a: ['a1', 'a2'], b: ['b1', 'b2'], c: ['c1', 'c2'], d: [], e: [] });
const sure = (known: Knowledge, hangsOnOne = false, table: Table = places) => {
  const model = compile(table);
  return certaintyOf(model, known, posterior(model, known), hangsOnOne);
};

describe('a verdict', () => {
  it('is proved when something odd was seen under two conditions that agree', () => {
    expect(sure(knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]))).toBe('proved');
  });
  it('is likely while all hangs on one answer', () => {
    expect(sure(knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]), true)).toBe('likely');
  });
  it('is likely when all that speaks for it was taken under one condition, however much that is', () => {
    const together = { group: 'meter on ohms' };
    expect(sure(knowing([seen('a1', 'wrong', together), seen('a2', 'wrong', together)]))).toBe('likely');
  });
  it('is likely when it has less than 0.5 without one of the conditions, however sure it is with it', () => {
    const known = knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]);
    const asRareAs = (weight: number) => ({
      ...places,
      rows: places.rows.map((one) => (one.cause === 'a' ? { ...one, weight } : one)),
    });
    // Alone, either answer leaves it at 0.53 and at 0.48.
    expect(sure(known, false, asRareAs(0.05))).toBe('proved');
    expect(sure(known, false, asRareAs(0.04))).toBe('likely');
  });
  it('may hang on what is said of the build: that is asked again in its own way', () => {
    const table: Table = {
      steps: { ...places.steps, fitted: ['wire', 'signal'] },
      rows: [
        row('a', { a1: [0.2, 0.8], a2: [0.2, 0.8], b1: [0.2, 0.8], fitted: [1, 0] }, 0.001),
        row('b', { a1: [0.9, 0.1], a2: [0.9, 0.1], b1: [0.9, 0.1], fitted: [0.005, 0.995] }, 1),
        row(UNTHOUGHT_SOUND, { a1: [0.9, 0.1], a2: [0.9, 0.1], b1: [0.9, 0.1], fitted: [0.005, 0.995] }),
      ],
    };
    const odd = ['a1', 'a2', 'b1'].map((step) => seen(step, 'wrong'));
    const model = compile(table);
    expect(shareOf(model, posterior(model, knowing(odd)), 'a')).toBeLessThan(0.5);
    expect(sure(knowing([...odd, seen('fitted', 'wire', { trust: 'build' })]), false, table)).toBe('proved');
  });
  it('is likely while nothing points at it: a sound bike or any other cause shows the same a quarter as often', () => {
    const shown = (byCause: number, bySound: number, byOther = 0) => {
      const odd = (share: number) => ({ a1: [1 - share, share], a2: [1 - share, share] });
      return sure(knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]), false, {
        steps: places.steps,
        rows: [row('a', odd(byCause), 80), row('b', odd(byOther)), row(UNTHOUGHT_SOUND, odd(bySound))],
      });
    };
    expect(shown(1, 0.24)).toBe('proved');
    expect(shown(1, 0.26)).toBe('likely');
    expect(shown(1, 0, 0.24)).toBe('proved');
    expect(shown(1, 0, 0.26)).toBe('likely');
    // What the cause itself seldom shows points at nothing.
    expect(shown(0.31, 0)).toBe('proved');
    expect(shown(0.29, 0)).toBe('likely');
  });
  it('is likely while an answer does not fit, one that it gives less than once in twenty', () => {
    const table = (fits: number): Table => ({
      steps: { ...places.steps, hum: ['hums', 'silent'] },
      rows: [
        ...places.rows.map((one) => ({
          ...one,
          weight: one.cause === 'a' ? 1000 : one.weight,
          shows: { ...one.shows, hum: one.cause === 'a' ? [1 - fits, fits] : [0.5, 0.5] },
        })),
      ],
    });
    const known = knowing([...['a1', 'a2'].map((step) => seen(step, 'wrong')), seen('hum', 'silent')]);
    expect(sure(known, false, table(0.06))).toBe('proved');
    expect(sure(known, false, table(0.04))).toBe('likely');
  });
  it('is likely when nothing was seen that a sound bike does not show, although all others are ruled out', () => {
    const table: Table = {
      steps: { ...places.steps, fitted: ['wire', 'signal'] },
      rows: places.rows
        .filter(({ cause }) => cause !== 'd')
        .map((one) => ({ ...one, shows: { ...one.shows, fitted: one.cause === 'e' ? [1, 0] : [0, 1] } })),
    };
    const known = knowing([...STEPS.map((step) => seen(step, 'right')), seen('fitted', 'wire', { trust: 'build' })]);
    const model = compile(table);
    expect(shareOf(model, posterior(model, known), 'e')).toBeGreaterThan(0.97);
    expect(sure(known, false, table)).toBe('likely');
  });
  it('is not proved by what is only told of the past or said of the build', () => {
    const table: Table = {
      steps: { ...places.steps, history: ['smoke', 'none'] },
      rows: places.rows.map((one) => ({
        ...one,
        shows: { ...one.shows, history: one.cause === 'a' ? [1, 0] : [0, 1] },
      })),
    };
    for (const trust of ['told', 'build'] as const) {
      const odd = ['a1', 'a2', 'history'].map((step) => seen(step, step === 'history' ? 'smoke' : 'wrong', { trust }));
      expect(sure(knowing(odd), false, table)).not.toBe('proved');
    }
  });
  it('is a short list when the leader has less than 0.6, and when whatever nobody thought of leads', () => {
    expect(sure(NOTHING_KNOWN)).toBe('short list');
    const nothingFits = knowing(['a1', 'b1', 'c1'].map((step) => seen(step, 'wrong')));
    const model = compile(places);
    expect(ranked(model, posterior(model, nothingFits))[0]?.cause).toBe(UNTHOUGHT_ODD);
    expect(sure(nothingFits)).toBe('short list');
  });
  it('is a short list when all reads as on a sound bike', () => {
    const table = { ...places, rows: places.rows.filter(({ cause }) => cause !== 'd' && cause !== 'e') };
    const sound = knowing(STEPS.map((step) => seen(step, 'right')));
    const model = compile(table);
    expect(ranked(model, posterior(model, sound))[0]?.cause).toBe(UNTHOUGHT_SOUND);
    expect(sure(sound, false, table)).toBe('short list');
  });
});

describe('the share of the leader', () => {
  const known = knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]);
  const model = compile(places);
  const at = (share: number) => {
    const believed = posterior(model, known);
    const others = (1 - share) / (model.causes.length - 1);
    return certaintyOf(
      model,
      known,
      { ...believed, causes: believed.causes.map((_, c) => (model.causes[c] === 'a' ? share : others)) },
      false,
    );
  };
  it('makes it likely from 0.6', () => {
    expect([0.59, 0.61].map(at)).toEqual(['short list', 'likely']);
  });
  // s/5 / (s/5 + 1 − s) ≥ 0.85 from s = 0.85·5 / (0.85·5 + 0.15) = 0.9659, by hand.
  it('makes it proved only if it stands with its prior five times smaller: from 0.966', () => {
    expect([0.949, 0.951, 0.965, 0.967].map(at)).toEqual(['likely', 'likely', 'likely', 'proved']);
  });
});

describe('the certainty, in any table and after any answers', () => {
  /** What somebody finds on a bike of the first cause who takes each reading by itself, or anything. */
  const asFirstShows = ({ steps, rows }: Table): Knowledge =>
    knowing(
      Object.entries(steps).flatMap(([step, names]) => {
        const shares = rows[0]?.shows[step];
        return shares ? [seen(step, names[shares.indexOf(Math.max(...shares))] ?? expect.unreachable())] : [];
      }),
    );
  it('is never proved below 0.95, for what nobody thought of, nor while all hangs on one answer', () => {
    let proved = 0;
    fc.assert(
      fc.property(
        anyTable.chain((table) =>
          fc.record({
            model: fc.constant<Model>(compile(table)),
            known: fc.oneof(anyKnowledge(table), fc.constant(asFirstShows(table))),
          }),
        ),
        ({ model, known }) => {
          const believed = posterior(model, known);
          const [first] = ranked(model, believed);
          expect(certaintyOf(model, known, believed, true)).not.toBe('proved');
          if (certaintyOf(model, known, believed, false) !== 'proved') return;
          proved++;
          expect(first?.shareRatio).toBeGreaterThanOrEqual(0.95);
          expect(isUnthought(first?.cause ?? '')).toBe(false);
        },
      ),
      { numRuns: 400 },
    );
    expect(proved).toBeGreaterThan(0);
  });
  it('is a short list for what nobody thought of, however sure that is', () => {
    const model = compile({ steps: { lamp: ['on', 'off'] }, rows: [row('fuse', { lamp: [0, 1] })] });
    for (const unthought of [UNTHOUGHT_SOUND, UNTHOUGHT_ODD]) {
      const believed = posterior(model, NOTHING_KNOWN);
      const leads = {
        ...believed,
        causes: believed.causes.map((_, c) => (model.causes[c] === unthought ? 0.99 : 0.001)),
      };
      expect(certaintyOf(model, NOTHING_KNOWN, leads, false)).toBe('short list');
    }
  });
});
