import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { certaintyOf, wouldProve } from '../../src/inference/certainty.ts';
import { type Knowledge, type Observation, posterior, ranked, shareOf } from '../../src/inference/posterior.ts';
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
  return certaintyOf(model, known, posterior(model, known), { hangsOnOne });
};

describe('a verdict', () => {
  it('is proved when something odd was seen under two conditions that agree', () => {
    expect(sure(knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]))).toBe('proved');
  });
  it('is not held up by a cause with which the step that points makes no sense, and of which nothing is known there', () => {
    // The rest of what anybody shows at a2 is wrong half the time: the mean that stands in for b there.
    const rows = places.rows.map((one) => {
      const { a2: _, ...shows } = one.shows;
      return one.cause === 'b' ? { ...one, shows } : one;
    });
    expect(sure(knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]), false, { ...places, rows })).toBe('proved');
  });
  it('is not held up by a sound bike at which the step that points makes no sense', () => {
    const pointsAt = (sound: Readonly<Record<string, readonly number[]>>) =>
      sure(knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]), false, {
        steps: places.steps,
        rows: [
          row('a', { a1: [0, 1], a2: [0, 1] }),
          row('b', { a1: [1, 0] }),
          ...['c', 'd', 'e'].map((cause) => row(cause, { a1: [1, 0], a2: [1, 0] })),
          row(UNTHOUGHT_SOUND, sound),
        ],
      });
    // What a sound bike shows nearly as often points at nobody: here a1, and a2 where it is looked at. The mean stands in else.
    expect(pointsAt({ a1: [0.7, 0.3], a2: [0.75, 0.25] })).toBe('likely');
    expect(pointsAt({ a1: [0.7, 0.3] })).toBe('proved');
  });
  it('is likely while all hangs on one answer', () => {
    expect(sure(knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]), true)).toBe('likely');
  });
  it('is likely where no single cause explains what was seen, however much points at one', () => {
    const known = knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]);
    const [model, hangsOnOne] = [compile(places), false];
    const believed = posterior(model, known);
    expect(certaintyOf(model, known, believed, { hangsOnOne, unexplained: false })).toBe('proved');
    expect(certaintyOf(model, known, believed, { hangsOnOne, unexplained: true })).toBe('likely');
  });
  it('is likely until one of the steps that have to show it came out as it mostly does with it', () => {
    const by = (known: Knowledge, provedBy: readonly string[]) => {
      const model = compile(places);
      return certaintyOf(model, known, posterior(model, known), { hangsOnOne: false, provedBy });
    };
    const odd = knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]);
    expect(by(odd, ['a2'])).toBe('proved');
    expect(by(odd, ['c2', 'a1'])).toBe('proved');
    expect(by(odd, ['c2'])).toBe('likely');
    expect(by(odd, [])).toBe('likely');
    // What it hardly ever shows there is not it.
    expect(by(knowing([...odd.observations, seen('c2', 'wrong')]), ['c2'])).toBe('likely');
    expect(by(knowing([...odd.observations, seen('c2', 'right')]), ['c2'])).toBe('proved');
    // Nor is what was told of the past.
    expect(by(knowing([...odd.observations, seen('c2', 'right', { trust: 'told' })]), ['c2'])).toBe('likely');
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
  /** Two wrong answers that `a` gives so often, while `b` and a sound bike give them so often. */
  const shown = (byCause: number, { byOther = 0, bySound = 0 }, more: readonly Observation[] = []) => {
    const both = (wrong: number) => ({ a1: [1 - wrong, wrong], a2: [1 - wrong, wrong] });
    return sure(knowing([seen('a1', 'wrong'), seen('a2', 'wrong'), ...more]), false, {
      steps: { ...places.steps, fitted: ['wire', 'signal'] },
      rows: [
        row('a', { ...both(byCause), fitted: [1, 0] }, 20),
        row('b', { ...both(byOther), fitted: [0, 1] }),
        row(UNTHOUGHT_SOUND, { ...both(bySound), fitted: [0.5, 0.5] }),
      ],
    });
  };
  it('is likely when a sound bike shows the same a quarter as often as the cause', () => {
    expect(shown(1, { bySound: 0.24 })).toBe('proved');
    expect(shown(1, { bySound: 0.26 })).toBe('likely');
    expect(shown(0.8, { bySound: 0.19 })).toBe('proved');
    expect(shown(0.74, { bySound: 0.19 })).toBe('likely');
  });
  it('is likely when another cause shows the same a quarter as often, unless this build hardly has that one', () => {
    expect(shown(1, { byOther: 0.24 })).toBe('proved');
    expect(shown(1, { byOther: 0.26 })).toBe('likely');
    expect(shown(1, { byOther: 0.26 }, [seen('fitted', 'wire', { trust: 'build' })])).toBe('proved');
  });
  it('is likely when the cause shows it in less than three of ten cases, however seldom others do', () => {
    expect(shown(0.31, {})).toBe('proved');
    expect(shown(0.29, {})).toBe('likely');
  });
  it('needs two that speak for it where a wrong one is dear, one of which points at it, and two that fail together are one', () => {
    const madeWith = (bySound: number) =>
      compile({
        steps: places.steps,
        rows: [
          row('a', { a1: [0, 1], a2: [0, 1], b1: [0, 1] }, 20),
          // It gives b1 as well, and so does a sound bike nearly: b1 points at nobody. a1 and a2 rule it out.
          row('b', { a1: [1, 0], a2: [1, 0], b1: [0, 1] }),
          row(UNTHOUGHT_SOUND, { a1: [1, 0], a2: [1, 0], b1: [1 - bySound, bySound] }),
        ],
      });
    const dear = (bySound: number, ...observations: Observation[]) => {
      const [model, known] = [madeWith(bySound), knowing(observations)];
      return certaintyOf(model, known, posterior(model, known), { hangsOnOne: false, witnesses: 2 });
    };
    const together = { group: 'key off' };
    const bothTogether = [seen('a1', 'wrong', together), seen('a2', 'wrong', together)];
    expect(dear(0.3, seen('a1', 'wrong'), seen('a2', 'wrong'))).toBe('proved');
    expect(dear(0.3, seen('a1', 'wrong'), seen('b1', 'wrong'))).toBe('likely');
    expect(dear(0.3, ...bothTogether, seen('b1', 'wrong'))).toBe('likely');
    // Where a sound bike gives b1 five times less often than `a`, it is a sign of `a` and of b, and b is ruled out.
    expect(dear(0.2, seen('a1', 'wrong'), seen('b1', 'wrong'))).toBe('proved');
    expect(dear(0.2, ...bothTogether, seen('b1', 'wrong'))).toBe('proved');
  });
  describe('where nothing points at the leader alone', () => {
    /** `a` and so many others show a hot case; each of the others shows something of its own that `a` does not. */
    const hot = (others: number): Table => {
      const names = Array.from({ length: others }, (_, n) => `other${n}`);
      const shows = (cause: string) => ({
        hot: [0, 1],
        smell: cause === 'a' ? [0.1, 0.9] : [0.5, 0.5],
        ...Object.fromEntries(names.map((name) => [name, cause === name ? [0, 1] : [1, 0]])),
      });
      const sound = { hot: [1, 0], smell: [1, 0], ...Object.fromEntries(names.map((name) => [name, [1, 0]])) };
      const steps = Object.keys(sound).map((step) => [step, ['right', 'wrong']] as const);
      return {
        steps: Object.fromEntries(steps),
        rows: [row('a', shows('a')), ...names.map((name) => row(name, shows(name))), row(UNTHOUGHT_SOUND, sound)],
      };
    };
    const answers = (others: number, { but = '', particular = true, ledOn = false } = {}) =>
      knowing([
        seen('hot', 'wrong', { particular, ledOn }),
        seen('smell', 'wrong'),
        ...Array.from({ length: others }, (_, n) => `other${n}`)
          .filter((name) => name !== but)
          .map((name) => seen(name, 'right')),
      ]);
    it('is proved when few others show a particular thing that it shows, and each of them is ruled out', () => {
      expect(sure(answers(1), false, hot(1))).toBe('proved');
      expect(sure(answers(2), false, hot(2))).toBe('proved');
      expect(sure(answers(2, { but: 'other1' }), false, hot(2))).not.toBe('proved');
    });
    it('is likely when more than two others show it: who knows all who do', () => {
      expect(sure(answers(3), false, hot(3))).toBe('likely');
    });
    it('is likely when that only led to another that was answered', () => {
      expect(sure(answers(1, { ledOn: true }), false, hot(1))).toBe('likely');
    });
    it('is likely when that was described by an ear or read on a wire: it may come from anything along the way', () => {
      expect(sure(answers(1, { particular: false }), false, hot(1))).toBe('likely');
    });
  });
  it('is likely when an answer was seen that the cause gives less than once in twenty', () => {
    const misfit = (share: number) =>
      sure(knowing([seen('a1', 'wrong'), seen('a2', 'wrong'), seen('b1', 'wrong')]), false, {
        steps: places.steps,
        rows: [
          row('a', { a1: [0, 1], a2: [0, 1], b1: [1 - share, share] }, 20),
          row('b', { a1: [1, 0], a2: [1, 0], b1: [1, 0] }),
          row(UNTHOUGHT_SOUND, { a1: [1, 0], a2: [1, 0], b1: [0.99, 0.01] }),
        ],
      });
    expect(misfit(0.06)).toBe('proved');
    expect(misfit(0.04)).toBe('likely');
  });
  it('is likely when an outcome was seen that nobody is known to give: nobody has understood this bike', () => {
    const odd = [seen('a1', 'wrong'), seen('a2', 'wrong')];
    expect(sure(knowing([...odd, seen('b1', 'loose')]))).toBe('likely');
    // What is told, and a step of which the table says nothing at all, bar nothing.
    expect(sure(knowing([...odd, seen('b1', 'loose', { trust: 'told' })]))).toBe('proved');
    expect(sure(knowing([...odd, seen('colour', 'red')]))).toBe('proved');
  });
  it('is proved of what is by design by what a sound bike shows as well, if few others do and are ruled out', () => {
    // a1: what a sound bike and `b` show too. b1: what `b` shows by itself.
    const model = compile({
      steps: { a1: ['right', 'wrong'], b1: ['right', 'wrong'] },
      rows: [
        row('a', { a1: [0, 1], b1: [1, 0] }, 20),
        row('b', { a1: [0, 1], b1: [0, 1] }, 4),
        row('c', { a1: [1, 0], b1: [1, 0] }),
        row(UNTHOUGHT_SOUND, { a1: [0, 1], b1: [0.3, 0.7] }),
      ],
    });
    const known = knowing([seen('a1', 'wrong', { particular: true }), seen('b1', 'right')]);
    const sureOf = (byDesign: boolean) =>
      certaintyOf(model, known, posterior(model, known), { hangsOnOne: false, byDesign });
    expect(sureOf(false)).toBe('likely');
    expect(sureOf(true)).toBe('proved');
  });
  it('is likely when a rival is not ruled out by twenty to one, whether by one other answer or by several together', () => {
    const ruledOut = (byOne: number, byAnother: number) =>
      sure(knowing([seen('a1', 'wrong', { particular: true }), seen('b1', 'right'), seen('c1', 'right')]), false, {
        steps: places.steps,
        rows: [
          row('a', { a1: [0, 1], b1: [1, 0], c1: [1, 0] }, 60),
          row('b', { a1: [0, 1], b1: [1 / byOne, 1 - 1 / byOne], c1: [1 / byAnother, 1 - 1 / byAnother] }),
          row('c', { a1: [1, 0], b1: [1, 0], c1: [0, 1] }),
          row(UNTHOUGHT_SOUND, { a1: [1, 0], b1: [1, 0], c1: [1, 0] }),
        ],
      });
    expect(ruledOut(16, 1)).toBe('likely');
    expect(ruledOut(24, 1)).toBe('proved');
    expect(ruledOut(4, 4)).toBe('likely');
    expect(ruledOut(5, 5)).toBe('proved');
  });
  it('is proved by a cure that was undone and done again: that stands by itself', () => {
    const cured = (confirmed: boolean) =>
      sure(knowing([seen('a1', 'wrong', { confirmed })]), false, {
        ...places,
        rows: places.rows.map((one) => (one.cause === 'a' ? { ...one, weight: 3 } : one)),
      });
    // Without the one answer it has 3 / (7 · 1.06) = 0.40.
    expect(cured(true)).toBe('proved');
    expect(cured(false)).toBe('likely');
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

describe('the steps that would prove a cause', () => {
  const proving = (
    known: Knowledge,
    steps: readonly string[],
    {
      cause = 'a',
      table = places,
      group = '',
      ...judged
    }: Partial<Parameters<typeof wouldProve>[5]> & { cause?: string; table?: Table; group?: string } = {},
  ) => {
    const model = compile(table);
    const asked = steps.map((step) => ({ step, group: group || step }));
    return wouldProve(model, known, posterior(model, known), cause, asked, judged);
  };
  it('are those at which it mostly shows what no other cause and no sound bike shows', () => {
    const one = knowing([seen('a1', 'wrong')]);
    expect(proving(one, ['a2', 'b1', 'b2', 'c1'])).toEqual(['a2']);
    expect(proving(one, STEPS, { cause: 'b' })).toEqual([]);
    expect(proving(NOTHING_KNOWN, STEPS)).toEqual([]);
  });
  it('are of those that were named, and of those that the table knows', () => {
    expect(proving(knowing([seen('a1', 'wrong')]), ['b1', 'colour'])).toEqual([]);
  });
  it('are none at which it mostly shows what a sound bike shows, whatever it shows at times', () => {
    const table = (wrong: number): Table => ({
      steps: { lamp: ['right', 'wrong'], fuse: ['right', 'wrong'] },
      rows: [
        row('a', { lamp: [1 - wrong, wrong], fuse: [0, 1] }),
        row('b', { lamp: [1, 0], fuse: [0.4, 0.6] }, 0.1),
        row(UNTHOUGHT_SOUND, { lamp: [1, 0], fuse: [0.4, 0.6] }, 0.1),
      ],
    });
    const known = knowing([seen('fuse', 'wrong')]);
    expect(proving(known, ['lamp'], { table: table(0.55) })).toEqual(['lamp']);
    expect(proving(known, ['lamp'], { table: table(0.45) })).toEqual([]);
  });
  it('are none of the condition under which all was taken', () => {
    const together = { group: 'key off' };
    expect(proving(knowing([seen('a1', 'wrong', together)]), ['a2'])).toEqual(['a2']);
    expect(proving(knowing([seen('a1', 'wrong', together)]), ['a2'], together)).toEqual([]);
  });
  it('are none where a second witness would be needed besides, or no single cause explains what was seen', () => {
    const known = knowing([seen('a1', 'wrong')]);
    expect(proving(known, ['a2'], { witnesses: 2 })).toEqual(['a2']);
    expect(proving(known, ['a2'], { witnesses: 3 })).toEqual([]);
    expect(proving(known, ['a2'], { unexplained: true })).toEqual([]);
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
      { hangsOnOne: false },
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
          expect(certaintyOf(model, known, believed, { hangsOnOne: true })).not.toBe('proved');
          if (certaintyOf(model, known, believed, { hangsOnOne: false }) !== 'proved') return;
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
      expect(certaintyOf(model, NOTHING_KNOWN, leads, { hangsOnOne: false })).toBe('short list');
    }
  });
});
