import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastCost, minutesByTest, type Problem, type Test } from '../../src/proof/least-cost.ts';

const plain = (id: string, minutes: number, outcomes: readonly string[]): Test => ({
  id,
  minutes,
  setups: [],
  after: [],
  outcomes,
});
const problem = (weights: readonly number[], tests: readonly Test[], more: Partial<Problem> = {}): Problem => ({
  weights,
  tests,
  setupMinutes: {},
  classes: [],
  ...more,
});

/** Every yes/no question there is about so many suspects, each at one minute. The first suspect always says no. */
const everyQuestion = (suspects: number): readonly Test[] =>
  Array.from({ length: 2 ** (suspects - 1) - 1 }, (_, i) =>
    plain(
      `question ${i + 1}`,
      1,
      Array.from({ length: suspects }, (__, at) => (at > 0 && ((i + 1) >> (at - 1)) & 1 ? 'yes' : 'no')),
    ),
  );
const entropyBits = (weights: readonly number[]): number => {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return -weights.reduce((sum, weight) => sum + (weight / total) * Math.log2(weight / total), 0);
};

describe('the least cost of telling suspects apart, with every yes/no question at one minute', () => {
  it('is 2.3 for the weights 0.25, 0.25, 0.2, 0.15, 0.15 (Cover and Thomas, Elements of Information Theory, example 5.6.1, from memory)', () => {
    const { minutes, exact } = leastCost(problem([0.25, 0.25, 0.2, 0.15, 0.15], everyQuestion(5)));
    expect(exact).toBe(true);
    expect(minutes).toBeCloseTo(2.3, 12);
  });
  it('is 2.24 for the weights 45, 13, 12, 16, 9, 5 (Cormen and others, Introduction to Algorithms, 16.3, from memory)', () => {
    expect(leastCost(problem([45, 13, 12, 16, 9, 5], everyQuestion(6))).minutes).toBeCloseTo(2.24, 12);
  });
  it('is 5 for as many suspects as it takes, 32, told apart by five questions that halve them', () => {
    const halving = [0, 1, 2, 3, 4].map((bit) =>
      plain(
        `bit ${bit}`,
        1,
        Array.from({ length: 32 }, (_, i) => ((i >> bit) & 1 ? 'yes' : 'no')),
      ),
    );
    expect(leastCost(problem(Array(32).fill(1), halving))).toMatchObject({ minutes: 5, exact: true });
  });
  it('is 3 for eight suspects that are equally likely: three bits', () => {
    expect(leastCost(problem(Array(8).fill(1), everyQuestion(8))).minutes).toBe(3);
  });
  it('lies between the entropy of the weights and one question more (Shannon’s noiseless coding theorem)', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 2, maxLength: 6 }), (weights) => {
        const { minutes } = leastCost(problem(weights, everyQuestion(weights.length)));
        expect(minutes).toBeGreaterThan(entropyBits(weights) - 1e-9);
        expect(minutes).toBeLessThan(entropyBits(weights) + 1);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the least cost of telling suspects apart', () => {
  const three = [plain('a', 1, ['x', 'y', 'y']), plain('b', 5, ['x', 'x', 'y'])];

  it('is nothing when there is nothing to tell apart', () => {
    expect(leastCost(problem([3], [plain('a', 1, ['x'])]))).toEqual({ minutes: 0, exact: true, plan: undefined });
  });
  it('begins with the cheap test and does the dear one only where it has to: (1 · 8 + 5 · 4) / 8 by hand', () => {
    const found = leastCost(problem([4, 2, 2], three));
    expect(found).toEqual({
      minutes: 3.5,
      exact: true,
      plan: { test: 'a', minutes: 1, next: { y: { test: 'b', minutes: 2.5, next: {} } } },
    });
    expect([...minutesByTest(found.plan)]).toEqual([
      ['a', 1],
      ['b', 2.5],
    ]);
  });
  it('stops at a class that one verdict stands for', () => {
    expect(leastCost(problem([4, 2, 2], three, { classes: [[1, 2]] })).minutes).toBe(1);
  });
  it('stops at suspects that no test tells apart', () => {
    expect(leastCost(problem([4, 2, 2], three.slice(0, 1))).minutes).toBe(1);
  });
  it('pays a set-up once: after 4 minutes a second test of 6 that shares 3 of them costs 3', () => {
    const tests = [
      { ...plain('a', 4, ['x', 'x', 'y']), setups: ['tones'] },
      { ...plain('b', 6, ['x', 'y', 'y']), setups: ['tones'] },
    ];
    const { minutes } = leastCost(problem([1, 1, 1], tests, { setupMinutes: { tones: 3 } }));
    // a first: 4 for all three, and 3 more for the two that it leaves.
    expect(minutes).toBeCloseTo((4 * 3 + 3 * 2) / 3, 12);
  });
  it('does what has to come first, even if that tells nothing', () => {
    const tests = [plain('safe', 2, ['x', 'x']), { ...plain('a', 1, ['x', 'y']), after: ['safe'] }];
    expect(leastCost(problem([1, 1], tests))).toMatchObject({ minutes: 3, exact: true });
  });
  it('gives a bound that is not above the truth when the search is cut short, and says so', () => {
    const weights = [5, 4, 3, 3, 2, 1];
    const cut = leastCost(problem(weights, everyQuestion(6)), 3);
    expect(cut.exact).toBe(false);
    expect(cut.minutes).toBeGreaterThan(0);
    expect(cut.minutes).toBeLessThanOrEqual(leastCost(problem(weights, everyQuestion(6))).minutes);
  });
  it('refuses a name that it does not know, and a test without an outcome for each suspect', () => {
    expect(() => leastCost(problem([1, 1], [{ ...plain('a', 1, ['x', 'y']), after: ['b'] }]))).toThrow(
      /^b is not one of a/,
    );
    expect(() => leastCost(problem([1, 1], [plain('a', 1, ['x'])]))).toThrow(
      /^a must have an outcome for each suspect$/,
    );
    expect(() => leastCost(problem(Array(33).fill(1), []))).toThrow(/at most 32, got 33/);
  });
});

/** The cheapest of all decision trees, found by building every one of them. Written apart from the search it judges. */
function cheapestTree({ weights, tests, setupMinutes, classes }: Problem): number {
  const grow = (alive: readonly number[], done: ReadonlySet<string>, paid: ReadonlySet<string>): number => {
    if (alive.length < 2 || classes.some((one) => alive.every((i) => one.includes(i)))) return 0;
    const separable = tests.some(
      ({ id, outcomes }) => !done.has(id) && new Set(alive.map((i) => outcomes[i])).size > 1,
    );
    if (!separable) return 0;
    const mass = alive.reduce((sum, i) => sum + (weights[i] ?? 0), 0);
    const costs = tests
      .filter(({ id, after }) => !done.has(id) && after.every((other) => done.has(other)))
      .map(({ id, minutes, setups, outcomes }) => {
        const saved = setups.reduce((sum, name) => sum + (paid.has(name) ? (setupMinutes[name] ?? 0) : 0), 0);
        const parts = Map.groupBy(alive, (i) => outcomes[i]);
        const next = [new Set([...done, id]), new Set([...paid, ...setups])] as const;
        return [...parts.values()].reduce((sum, part) => sum + grow(part, ...next), mass * (minutes - saved));
      });
    return Math.min(...costs);
  };
  return (
    grow(
      weights.map((_, i) => i),
      new Set(),
      new Set(),
    ) / weights.reduce((sum, weight) => sum + weight, 0)
  );
}

describe('the least cost, against every decision tree there is', () => {
  const anyProblem = fc
    .record({ suspects: fc.integer({ min: 2, max: 5 }), tests: fc.integer({ min: 1, max: 4 }) })
    .chain(({ suspects, tests }) =>
      fc.record({
        weights: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: suspects, maxLength: suspects }),
        setupMinutes: fc.record({ tones: fc.integer({ min: 0, max: 3 }), panel: fc.integer({ min: 0, max: 3 }) }),
        classes: fc.array(fc.subarray([...Array(suspects).keys()], { minLength: 2 }), { maxLength: 2 }),
        tests: fc.tuple(
          ...Array.from({ length: tests }, (_, i) =>
            fc.record({
              id: fc.constant(`t${i}`),
              minutes: fc.integer({ min: 6, max: 15 }),
              setups: fc.subarray(['tones', 'panel']),
              // Only on tests before it, so that no two wait for each other.
              after: fc.subarray(
                Array.from({ length: i }, (__, j) => `t${j}`),
                { maxLength: Math.min(i, 1) },
              ),
              outcomes: fc.array(fc.constantFrom('x', 'y', 'z'), { minLength: suspects, maxLength: suspects }),
            }),
          ),
        ),
      }),
    );
  it('is the cost of the cheapest, with set-ups, orders and classes', () => {
    fc.assert(
      fc.property(anyProblem, (it_) => {
        const { minutes, exact } = leastCost(it_);
        expect(exact).toBe(true);
        expect(minutes).toBeCloseTo(cheapestTree(it_), 9);
      }),
      { numRuns: 400 },
    );
  });
});
