import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nextSteps } from '../../src/inference/next.ts';
import { reckoned, thinksOfPairs, withPairs } from '../../src/inference/pairs.ts';
import { type Knowledge, type Observation, posterior, ranked, shareOf } from '../../src/inference/posterior.ts';
import { type Compiled, compile, isUnthought, type Table, UNTHOUGHT_SOUND } from '../../src/inference/table.ts';
import { expectClose } from '../compute/close.ts';
import { anyCase } from './any-table.ts';
import { knowing, NOTHING_KNOWN, rightOrWrong, row, seen } from './tables.ts';

/**
 * The polybox: 3·2, 2·3 and 2·3 by the multipliers M1, M2, M3 at X, Y, Z; X + Y and Y + Z by the adders A1, A2 at F, G. All
 * fail as often. De Kleer and Williams, Diagnosing Multiple Faults, Artificial Intelligence 32 (1987), 97–130. A reading here
 * is right or wrong, so that two faults that make up for each other at an output (their {M2, M3} and {M2, A2} for F = 10
 * and G = 12) cannot be said.
 */
const PLACES = ['F', 'G', 'X', 'Y', 'Z'];
const polybox = compile(
  rightOrWrong(PLACES, { M1: ['X', 'F'], M2: ['Y', 'F', 'G'], M3: ['Z', 'G'], A1: ['F'], A2: ['G'] }),
);
const readings = (read: Readonly<Record<string, string>>) =>
  Object.entries(read).map(([place, outcome]) => seen(place, outcome));

/** What the rows of pairs put wrong, and the share of each: the pair of M1 and A2 puts F, G and X wrong. */
function pairShares(known: Knowledge, model: Compiled = polybox) {
  const wider = withPairs(model, known, posterior(model, known));
  const { rows } = posterior(wider, known);
  return wider.causeOf.slice(model.causeOf.length).map((c, p) => {
    const r = model.causeOf.length + p;
    const wrong = [...model.steps.keys()].filter((step) => (wider.steps.get(step)?.byRow[1]?.[r] ?? 0) > 0.5);
    return { under: wider.causes[c] as string, wrong: wrong.join(''), shareRatio: rows[r] as number };
  });
}

describe('the polybox with one output wrong', () => {
  const known = knowing(readings({ F: 'wrong', G: 'right' }));
  const { model, believed } = reckoned(polybox, known);

  it('has M1 and A1 as its two single candidates, as likely as each other', () => {
    const [first, second, third] = ranked(model, believed);
    expect([first?.cause, second?.cause].toSorted()).toEqual(['A1', 'M1']);
    expectClose(first?.shareRatio ?? 0, second?.shareRatio ?? 1, 1e-6);
    expect(third?.shareRatio).toBeLessThan(0.02);
  });
  it('needs no thought of two faults', () => {
    expect(thinksOfPairs(polybox, known, believed)).toBe(false);
    expect(model).toBe(polybox);
  });
  it('is best probed at X, which tells the two apart', () => {
    const [next, other] = nextSteps(
      model,
      believed,
      ['X', 'Y', 'Z'].map((step) => ({ step, minutes: 1, place: 'board' })),
    );
    expect(next?.step).toBe('X');
    expect(next?.bits).toBeGreaterThan(10 * (other?.bits ?? 0));
  });
  it('is M1 with X wrong, and A1 with X right', () => {
    for (const [outcome, cause] of [
      ['wrong', 'M1'],
      ['right', 'A1'],
    ] as const) {
      const probed = knowing([...known.observations, seen('X', outcome)]);
      const after = reckoned(polybox, probed);
      const [first] = ranked(after.model, after.believed);
      expect(first?.cause).toBe(cause);
      expect(first?.shareRatio).toBeGreaterThan(0.94);
    }
  });
});

describe('the polybox with both outputs wrong', () => {
  it('is M2 alone while that explains both', () => {
    const known = knowing(readings({ F: 'wrong', G: 'wrong' }));
    const { model, believed } = reckoned(polybox, known);
    expect(model).toBe(polybox);
    expect(ranked(model, believed)[0]?.cause).toBe('M2');
    expect(shareOf(model, believed, 'M2')).toBeGreaterThan(0.9);
  });
  // The conflicts {M1, A1} and {M3, A2} are left when M2 is cleared; their smallest hitting sets are these four pairs.
  it('has the pairs of M1 or A1 with M3 or A2 as candidates when Y is right, as likely as each other, before all others', () => {
    const known = knowing(readings({ F: 'wrong', G: 'wrong', Y: 'right' }));
    expect(thinksOfPairs(polybox, known, posterior(polybox, known))).toBe(true);
    const pairs = pairShares(known).toSorted((a, b) => b.shareRatio - a.shareRatio);
    const four = pairs.slice(0, 4);
    expect(four.map(({ wrong }) => wrong).toSorted()).toEqual(['FG', 'FGX', 'FGXZ', 'FGZ']);
    for (const { shareRatio } of four) expectClose(shareRatio, four[0]?.shareRatio ?? 0, 1e-6);
    expect(pairs[4]?.shareRatio).toBeLessThan((four[3]?.shareRatio ?? 0) / 20);
  });
  it('is the pair of M1 and M3 when X and Z are wrong too, although nothing by itself explains it', () => {
    const known = knowing(readings({ F: 'wrong', G: 'wrong', Y: 'right', X: 'wrong', Z: 'wrong' }));
    const alone = posterior(polybox, known);
    expect(isUnthought(ranked(polybox, alone)[0]?.cause ?? '')).toBe(true);
    const { model, believed } = reckoned(polybox, known);
    expect(['M1', 'M3']).toContain(ranked(model, believed)[0]?.cause);
    const [best] = pairShares(known).toSorted((a, b) => b.shareRatio - a.shareRatio);
    expect(best?.wrong).toBe('FGXZ');
    expect(best?.shareRatio).toBeGreaterThan(0.75);
  });
});

describe('two causes at once', () => {
  it('are thought of after a repair that made it better and not good, and not after one that did nothing', () => {
    const known = readings({ F: 'wrong', X: 'wrong' });
    const thought = (result: 'better' | 'still') => {
      const after = knowing(known, [{ cause: 'M1', failsRatio: 0.02, result }]);
      return thinksOfPairs(polybox, after, posterior(polybox, after));
    };
    expect(thought('better')).toBe(true);
    expect(thought('still')).toBe(false);
  });
  // −log₂ 0.15 − H(0.15) = 2.74 − 0.61 bits and −log₂ 0.17 − H(0.17) = 2.56 − 0.66, by hand.
  it('are thought of when the answers are less likely by two bits than usual under the likeliest cause with a name', () => {
    const thought = (chance: number, ...answers: readonly Observation[]) => {
      const model = compile({
        steps: { lamp: ['on', 'off'], hum: ['hums', 'silent'] },
        rows: [row('fuse', { lamp: [chance, 1 - chance], hum: [0.5, 0.5] })],
      });
      return thinksOfPairs(model, knowing(answers), posterior(model, knowing(answers)));
    };
    expect(thought(0.15, seen('lamp', 'on'))).toBe(true);
    expect(thought(0.17, seen('lamp', 'on'))).toBe(false);
    expect(thought(0.17, seen('lamp', 'on'), seen('hum', 'silent'))).toBe(false);
  });
  it('are not thought of for what is only told of the past', () => {
    const told = PLACES.map((place) => seen(place, 'wrong', { trust: 'told' }));
    expect(thinksOfPairs(polybox, knowing(told), posterior(polybox, knowing(told)))).toBe(false);
  });
  it('go under the one that is likelier by itself: that is mended first', () => {
    const known = knowing(readings({ F: 'wrong', G: 'wrong', X: 'wrong', Y: 'right' }));
    expect(pairShares(known).find(({ wrong }) => wrong === 'FGXZ')?.under).toBe('M1');
  });
  it('go under the other when that one was mended: its repair left the other in place', () => {
    const read = readings({ F: 'wrong', G: 'wrong', X: 'wrong', Y: 'right' });
    const known = knowing(read, [{ cause: 'M1', failsRatio: 0.02, result: 'better' }]);
    expect(pairShares(known).find(({ wrong }) => wrong === 'FGXZ')?.under).toBe('M3');
    const { model, believed } = reckoned(polybox, known);
    expect(
      ranked(model, believed)
        .slice(0, 2)
        .map(({ cause }) => cause)
        .toSorted(),
    ).toEqual(['A2', 'M3']);
  });
  it('go under the likelier one again when both were mended', () => {
    const mended = ['M1', 'M3'].map((cause) => ({ cause, failsRatio: 0.02, result: 'better' }) as const);
    const known = knowing(readings({ F: 'wrong', G: 'wrong', X: 'wrong', Y: 'right' }), mended);
    expect(pairShares(known).find(({ wrong }) => wrong === 'FGXZ')?.under).toBe('M1');
  });
  it('are as likely at first as one bike in twenty has a second one, of the sixteen likeliest', () => {
    const twenty = Object.fromEntries(Array.from({ length: 20 }, (_, c) => [`cause-${c}`, [`place-${c}`]]));
    const model = compile(rightOrWrong(Object.values(twenty).flat(), twenty));
    const wider = withPairs(model, NOTHING_KNOWN, posterior(model, NOTHING_KNOWN));
    const pairs = wider.prior.slice(model.prior.length);
    expect(pairs).toHaveLength((16 * 15) / 2);
    // Each has 0.05 of the named causes, which have 1 / 1.06 of all.
    for (const prior of pairs) expectClose(prior, (0.05 * 0.05 * 0.05) / 1.06 ** 2);
  });
  it('show what is odd of either, and what is sound only if both do', () => {
    const table: Table = {
      steps: { lamp: ['bright', 'dim', 'dark'] },
      rows: [
        row('lead', { lamp: [0.5, 0.5, 0] }),
        row('earth', { lamp: [0.4, 0.3, 0.3] }),
        row(UNTHOUGHT_SOUND, { lamp: [1, 0, 0] }),
      ],
    };
    const model = compile(table);
    const { steps } = withPairs(model, NOTHING_KNOWN, posterior(model, NOTHING_KNOWN));
    const [bright = [], dim = [], dark = []] = steps.get('lamp')?.byRow.map((own) => [...own]) ?? [];
    // 0.5 · 0.4 = 0.2 bright; the other 0.8 as 1 − 0.5 · 0.7 = 0.65 to 0.3.
    expect(bright.at(-1)).toBeCloseTo(0.2, 8);
    expect(dim.at(-1)).toBeCloseTo((0.8 * 0.65) / 0.95, 8);
    expect(dark.at(-1)).toBeCloseTo((0.8 * 0.3) / 0.95, 8);
  });
  it('show what is said to come of what each shows: what cures one of two leaves the other', () => {
    const table: Table = {
      steps: { press: ['cured', 'same'] },
      rows: [row('plug', { press: [0.8, 0.2] }), row('wire', { press: [0.1, 0.9] })],
    };
    const model = compile(table);
    const both = (one: string, other: string) => (one === 'cured' ? other : one);
    const { steps } = withPairs(model, NOTHING_KNOWN, posterior(model, NOTHING_KNOWN), () => both);
    const [cured = [], same = []] = steps.get('press')?.byRow.map((own) => [...own]) ?? [];
    // Both at once: 0.8 · 0.1, by the product rule.
    expect(cured.at(-1)).toBeCloseTo(0.08, 8);
    expect(same.at(-1)).toBeCloseTo(0.92, 8);
  });
  it('show what each shows on the build that is likelier now', () => {
    const table: Table = {
      steps: { lamp: ['on', 'off'], hum: ['hums', 'silent'] },
      rows: [
        row('lead', { lamp: [0, 1], hum: [1, 0] }, 3),
        row('lead', { lamp: [1, 0], hum: [0, 1] }, 2),
        row('earth', { lamp: [1, 0], hum: [1, 0] }),
        row(UNTHOUGHT_SOUND, { lamp: [1, 0], hum: [1, 0] }),
      ],
    };
    const model = compile(table);
    const silentLast = (known: Knowledge) =>
      withPairs(model, known, posterior(model, known)).steps.get('hum')?.byRow[1]?.at(-1);
    expect(silentLast(NOTHING_KNOWN)).toBeCloseTo(0, 8);
    expect(silentLast(knowing([seen('lamp', 'on')]))).toBeCloseTo(1, 8);
  });
  it('are fitted as one of them is: a build is no fault', () => {
    const table: Table = {
      steps: { fitted: ['wire', 'signal'] },
      rows: [
        row('lead', { fitted: [1, 0] }, 2),
        row('earth', { fitted: [0.5, 0.5] }),
        row(UNTHOUGHT_SOUND, { fitted: [0.5, 0.5] }),
      ],
    };
    const model = compile(table);
    const known = knowing([seen('fitted', 'wire', { trust: 'build' })]);
    const { steps } = withPairs(model, known, posterior(model, known));
    expect(steps.get('fitted')?.byRow.map((own) => own.at(-1))).toEqual(
      model.steps.get('fitted')?.byRow.map((own) => own[0]),
    );
  });
  it('leave the shares adding up to 1 and nothing impossible, in any table and after any answers', () => {
    fc.assert(
      fc.property(anyCase, ({ table, known }) => {
        const model = compile(table);
        const wider = withPairs(model, known, posterior(model, known));
        const named = model.causes.filter((cause) => !isUnthought(cause)).length;
        expect(wider.causeOf).toHaveLength(model.causeOf.length + (named * (named - 1)) / 2);
        for (const { byRow } of [...model.steps.keys()].flatMap((step) => wider.steps.get(step) ?? []))
          for (const r of wider.causeOf.keys()) {
            expectClose(
              byRow.reduce((sum, own) => sum + (own[r] as number), 0),
              1,
            );
            for (const own of byRow) expect(own[r]).toBeGreaterThanOrEqual(0);
          }
        const { rows, causes } = posterior(wider, known);
        for (const share of rows) expect(share).toBeGreaterThan(0);
        expectClose(
          causes.reduce((sum, share) => sum + share, 0),
          1,
        );
      }),
    );
  });
});
