import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nextSteps, type Offer } from '../../src/inference/next.ts';
import { type Observation, posterior } from '../../src/inference/posterior.ts';
import { compile, type Table } from '../../src/inference/table.ts';
import { knowing, NOTHING_KNOWN, rightOrWrong, row, seen, wrongAt } from './tables.ts';

/** One check for each of so many causes that are as likely as each other: it finds that one and no other. */
const parts = (count: number): Table => {
  const checks = Array.from({ length: count }, (_, i) => `check-${i}`);
  return {
    steps: Object.fromEntries(checks.map((check) => [check, ['sound', 'found']])),
    rows: checks.map((check) => wrongAt(checks, `cause of ${check}`, [check])),
  };
};

const permutations = <T>(of: readonly T[]): readonly (readonly T[])[] =>
  of.length < 2 ? [of] : of.flatMap((first, i) => permutations(of.toSpliced(i, 1)).map((rest) => [first, ...rest]));

describe('checks that find one cause each, all as likely as each other', () => {
  // Kadane and Simon, Optimal strategies for a class of constrained sequential problems, Annals of Statistics 5 (1977): the
  // expected cost until it is found is least in the order of p/C. Bits a minute are that order where all p are the same.
  it('come in the order of p/C, which costs least of all orders until the cause is found', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 40 }), { minLength: 2, maxLength: 6 }), (minutes) => {
        const model = compile(parts(minutes.length));
        const known: Observation[] = [];
        while (known.length < minutes.length) {
          const open = minutes
            .map((own, i): Offer => ({ step: `check-${i}`, minutes: own, place: 'bench' }))
            .filter(({ step }) => known.every((one) => one.step !== step));
          const [next] = nextSteps(model, posterior(model, knowing(known)), open);
          known.push(seen(next?.step ?? expect.unreachable(), 'sound'));
        }
        const order = known.map(({ step }) => minutes[Number(step.replace('check-', ''))] as number);
        const p = 1 / minutes.length;
        expect(order).toEqual(minutes.toSorted((a, b) => p / b - p / a));
        const cost = (of: readonly number[]) =>
          of.reduce(({ spent, sum }, own) => ({ spent: spent + own, sum: sum + p * (spent + own) }), {
            spent: 0,
            sum: 0,
          }).sum;
        expect(cost(order)).toBeCloseTo(Math.min(...permutations(minutes).map(cost)), 9);
      }),
      { numRuns: 40 },
    );
  });
});

describe('the next step', () => {
  const model = compile(rightOrWrong(['a', 'b', 'c'], { one: ['a'], two: ['b'], three: ['c'], four: [] }));
  const believed = posterior(model, NOTHING_KNOWN);
  const offer = (step: string, minutes: number, place = 'seat'): Offer => ({ step, minutes, place });
  const order = (offers: readonly Offer[], lastPlace?: string) =>
    nextSteps(model, believed, offers, lastPlace).map(({ step }) => step);

  it('is the shortest of those that tell as much', () => {
    expect(order([offer('a', 3), offer('b', 1), offer('c', 2)])).toEqual(['b', 'c', 'a']);
  });
  // Four causes as likely as each other, by hand: all at once for 2.6 min; or one of them for 1 min, and in three cases of
  // four all at once after that, 1 + ¾·2.6 = 2.95 min. A bit is cheaper at the short one: 0.81 bits/min against 0.77.
  it('is a longer one that settles it all before a short one that only begins, where that costs less in the end', () => {
    const four = compile({
      steps: { begins: ['yes', 'no'], settles: ['1', '2', '3', '4'] },
      rows: [0, 1, 2, 3].map((i) =>
        row(`cause ${i}`, { begins: i === 0 ? [1, 0] : [0, 1], settles: [0, 1, 2, 3].map((o) => (o === i ? 1 : 0)) }),
      ),
    });
    const next = nextSteps(four, posterior(four, NOTHING_KNOWN), [offer('begins', 1), offer('settles', 2.6)]);
    expect(next.map(({ step }) => step)).toEqual(['settles', 'begins']);
    expect(next[0]?.score).toBeLessThan(next[1]?.score ?? 0);
  });
  it('stays where the work is going on until another place offers 1.3 times as much', () => {
    expect(order([offer('a', 1, 'lid'), offer('b', 1.29)], 'seat')).toEqual(['b', 'a']);
    expect(order([offer('a', 1, 'lid'), offer('b', 1.31)], 'seat')).toEqual(['a', 'b']);
    expect(order([offer('a', 1, 'lid'), offer('b', 1.29)])).toEqual(['a', 'b']);
  });
  it('is scored without what speaks for staying', () => {
    const [away, here] = [
      nextSteps(model, believed, [offer('b', 2)]),
      nextSteps(model, believed, [offer('b', 2)], 'seat'),
    ];
    expect(here).toEqual(away);
    expect(here[0]?.score).toBeCloseTo((here[0]?.bits ?? 0) / 2, 12);
  });
  it('costs no less than six seconds', () => {
    for (const minutes of [0, 0.05, 0.1]) {
      const [next] = nextSteps(model, believed, [offer('b', minutes)]);
      expect(next?.score).toBeCloseTo((next?.bits ?? 0) / 0.1, 12);
    }
  });
  it('may be one that says nothing itself, for what it opens: the bits of that, over the minutes of both', () => {
    const alone = nextSteps(model, believed, [offer('b', 3)])[0] ?? expect.unreachable();
    const opening = { ...offer('open-lid', 1), opens: [{ step: 'b', minutes: 2 }] };
    expect(nextSteps(model, believed, [opening])).toEqual([{ step: 'open-lid', bits: alone.bits, score: alone.score }]);
    expect(order([offer('a', 2), opening])).toEqual(['a', 'open-lid']);
    expect(order([offer('a', 4), opening])).toEqual(['open-lid', 'a']);
  });
  it('is not credited with its own bits and with those of what it opens, which may be the same', () => {
    const alone = nextSteps(model, believed, [offer('b', 1)])[0] ?? expect.unreachable();
    const [next] = nextSteps(model, believed, [{ ...offer('a', 1), opens: [{ step: 'b', minutes: 0 }] }]);
    expect(next?.bits).toBeCloseTo(alone.bits, 12);
  });
  it('keeps its own score if what it opens is worth less', () => {
    const plain = nextSteps(model, believed, [offer('a', 1)]);
    expect(nextSteps(model, believed, [{ ...offer('a', 1), opens: [{ step: 'b', minutes: 5 }] }])).toEqual(plain);
  });
  it('is one that tells causes apart before a cheaper one that all answer alike', () => {
    const table = { steps: { lamp: ['on', 'off'], hum: ['hums', 'silent'] } };
    const two = compile({
      ...table,
      rows: [row('fuse', { lamp: [1, 0], hum: [0.5, 0.5] }), row('lead', { lamp: [0, 1], hum: [0.5, 0.5] })],
    });
    const [first] = nextSteps(two, posterior(two, NOTHING_KNOWN), [offer('hum', 0.1), offer('lamp', 20)]);
    expect(first?.step).toBe('lamp');
  });
  it('is none where nothing is offered', () => {
    expect(nextSteps(model, believed, [])).toEqual([]);
  });
});
