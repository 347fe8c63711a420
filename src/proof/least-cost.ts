/** One step as the search sees it: what it costs, what it takes, and the outcome that each suspect would give. */
export interface Test {
  readonly id: string;
  /** Minutes on its own, everything that it takes included. */
  readonly minutes: number;
  /** What it takes to be set up, by name. A set-up that an earlier test has paid for is not paid again. */
  readonly setups: readonly string[];
  /** Tests that have to be done before it, for safety or because it makes no sense without. */
  readonly after: readonly string[];
  /** For each suspect the outcome that it gives. */
  readonly outcomes: readonly string[];
}

/** What is to be told apart. */
export interface Problem {
  /** How often each suspect is the cause; the sum may be anything. */
  readonly weights: readonly number[];
  readonly tests: readonly Test[];
  /** Minutes of each set-up, which are part of the minutes of every test that takes it. */
  readonly setupMinutes: Readonly<Record<string, number>>;
  /** Sets of suspects that need not be told apart: one verdict stands for all of them. */
  readonly classes: readonly (readonly number[])[];
}

export interface LeastCost {
  /** Expected minutes, over the weights. */
  readonly minutes: number;
  /** False when the search was cut short: the minutes are then a bound that no order can be below. */
  readonly exact: boolean;
  /** The cheapest order; undefined when there is nothing to tell apart, or the search was cut short. */
  readonly plan: Plan | undefined;
}

/** What to do next, and then by outcome. An outcome after which nothing is left to tell apart has no plan. */
export interface Plan {
  readonly test: string;
  /** Expected minutes of this test alone: its cost here, times the share of the cases that come here. */
  readonly minutes: number;
  readonly next: Readonly<Record<string, Plan>>;
}

/** Suspects are bits of one number, and so are the tests that others wait for. */
export const MOST_SUSPECTS = 32;
const MOST_STATES = 400_000;

interface Compiled {
  readonly minutes: number;
  readonly setups: number;
  /** The tests to be done before, and its own bit among those that others wait for; 0 when none does. */
  readonly after: number;
  readonly own: number;
  /** The suspects that give each of its outcomes. */
  readonly blocks: readonly number[];
  readonly outcomes: readonly string[];
}

const bitsOf = (all: readonly string[], some: readonly string[]): number =>
  some.reduce((bits, one) => {
    const at = all.indexOf(one);
    if (at < 0) throw new RangeError(`${one} is not one of ${all.join(', ')}`);
    return bits | (1 << at);
  }, 0);

function compile({ weights, tests, setupMinutes, classes }: Problem) {
  if (weights.length > MOST_SUSPECTS)
    throw new RangeError(`weights must be at most ${MOST_SUSPECTS}, got ${weights.length}`);
  const setups = Object.keys(setupMinutes);
  const ids = tests.map(({ id }) => id);
  for (const id of tests.flatMap(({ after }) => after)) bitsOf(ids, [id]);
  const awaited = ids.filter((id) => tests.some(({ after }) => after.includes(id)));
  if (awaited.length > MOST_SUSPECTS) throw new RangeError(`tests may wait for at most ${MOST_SUSPECTS} others`);
  const compiled = tests.map(({ id, minutes, setups: takes, after, outcomes }): Compiled => {
    if (outcomes.length !== weights.length) throw new RangeError(`${id} must have an outcome for each suspect`);
    const blocks = new Map<string, number>();
    for (const [i, outcome] of outcomes.entries()) blocks.set(outcome, (blocks.get(outcome) ?? 0) | (1 << i));
    return {
      minutes,
      setups: bitsOf(setups, takes),
      after: bitsOf(awaited, after),
      own: awaited.includes(id) ? bitsOf(awaited, [id]) : 0,
      blocks: [...blocks.values()],
      outcomes: [...blocks.keys()],
    };
  });
  const together = classes.map((list) => list.reduce((bits, i) => bits | (1 << i), 0));
  return { compiled, together, savings: setups.map((name) => setupMinutes[name] ?? 0) };
}

/**
 * The least expected minutes in which the suspects can be told apart, over every order of tests there is: the next test
 * may depend on the outcomes before it. f(S) = min over tests of cost + Σ f(S with each outcome), and 0 as soon as one
 * class holds all of S, or no test that is left splits it.
 *
 * Source: dynamic programming over the sets of what is still possible, as for binary testing in Garey, "Optimal binary
 * identification procedures", SIAM J. Appl. Math. 23 (1972), from memory. A branch is given up when a bound of its cost
 * is above the best found: each suspect pays at least for the dearest of the pairs that it has to be told apart in.
 * @throws {RangeError} if there are more than 32 suspects, a test lacks an outcome, or a name is unknown.
 */
export function leastCost(problem: Problem, mostStates = MOST_STATES): LeastCost {
  const { compiled, together, savings } = compile(problem);
  const { weights, tests } = problem;
  const all = weights.reduce((bits, _, i) => bits | (1 << i), 0);
  const total = weights.reduce((sum, weight) => sum + weight, 0);

  const weightOf = (set: number): number => weights.reduce((sum, weight, i) => sum + (set & (1 << i) ? weight : 0), 0);
  const costOf = (test: Compiled, paid: number): number =>
    savings.reduce((cost, saving, i) => cost - (test.setups & paid & (1 << i) ? saving : 0), test.minutes);
  const splits = (test: Compiled, set: number): boolean => !test.blocks.some((block) => (set & block) === set);
  const isDone = (set: number): boolean => together.some((one) => (set & one) === set) || (set & (set - 1)) === 0;

  /** The least that separating two suspects can cost: with every set-up paid. 0 where nothing has to, or can, be done. */
  const everythingPaid = (1 << savings.length) - 1;
  const pairMinutes = weights.map((_, a) =>
    weights.map((__, b) => {
      const pair = (1 << a) | (1 << b);
      if (isDone(pair)) return 0;
      const costs = compiled.filter((test) => splits(test, pair)).map((test) => costOf(test, everythingPaid));
      return costs.length > 0 ? Math.min(...costs) : 0;
    }),
  );
  const boundOf = (set: number): number => {
    let bound = 0;
    for (const [a, row] of pairMinutes.entries()) {
      if (!(set & (1 << a))) continue;
      let dearest = 0;
      for (const [b, minutes] of row.entries()) if (set & (1 << b) && minutes > dearest) dearest = minutes;
      bound += (weights[a] as number) * dearest;
    }
    return bound;
  };

  const known = new Map<string, { readonly cost: number; readonly best?: number }>();
  let cutShort = false;

  /** The tests worth doing next: those that split, and those that one that splits still waits for. */
  function worthDoing(set: number, done: number): readonly number[] {
    const wanted = new Set<number>();
    const want = (i: number): void => {
      const test = compiled[i] as Compiled;
      const missing = test.after & ~done;
      if (missing === 0) wanted.add(i);
      else for (const [j, other] of compiled.entries()) if (missing & other.own) want(j);
    };
    // What was done splits nothing any more, so only tests that others wait for have to be remembered.
    for (const [i, test] of compiled.entries()) if (splits(test, set)) want(i);
    return [...wanted];
  }

  function branches(set: number, done: number, paid: number) {
    return worthDoing(set, done)
      .map((i) => {
        const test = compiled[i] as Compiled;
        const parts = test.blocks.map((block) => set & block).filter((part) => part !== 0);
        const cost = costOf(test, paid) * weightOf(set);
        const bound = cost + parts.reduce((sum, part) => sum + (isDone(part) ? 0 : boundOf(part)), 0);
        return { i, test, parts, cost, bound };
      })
      .toSorted((a, b) => a.bound - b.bound);
  }

  const keyOf = (set: number, done: number, paid: number) => `${set} ${done} ${paid}`;

  function search(set: number, done: number, paid: number): number {
    if (isDone(set)) return 0;
    const key = keyOf(set, done, paid);
    const before = known.get(key);
    if (before) return before.cost;
    if (known.size > mostStates) {
      cutShort = true;
      return boundOf(set);
    }
    let least = Infinity;
    let best: number | undefined;
    for (const { i, test, parts, cost, bound } of branches(set, done, paid)) {
      if (bound >= least) break;
      const sum = parts.reduce((so, part) => so + search(part, done | test.own, paid | test.setups), cost);
      if (sum < least) [least, best] = [sum, i];
    }
    // No test that is left splits these: they stay together.
    const found = best === undefined ? { cost: 0 } : { cost: least, best };
    known.set(key, found);
    return found.cost;
  }

  function planFor(set: number, done: number, paid: number): Plan | undefined {
    const best = isDone(set) ? undefined : known.get(keyOf(set, done, paid))?.best;
    const [test, id] = best === undefined ? [] : [compiled[best], tests[best]?.id];
    if (best === undefined || !test || id === undefined) return undefined;
    const next = test.blocks.flatMap((block, i) => {
      const plan = set & block ? planFor(set & block, done | test.own, paid | test.setups) : undefined;
      return plan ? [[test.outcomes[i] as string, plan] as const] : [];
    });
    return { test: id, minutes: (costOf(test, paid) * weightOf(set)) / total, next: Object.fromEntries(next) };
  }

  const cost = search(all, 0, 0);
  if (cutShort) return { minutes: boundOf(all) / total, exact: false, plan: undefined };
  return { minutes: cost / total, exact: true, plan: planFor(all, 0, 0) };
}

/** The minutes of a plan by test, the same test in several places together. */
export function minutesByTest(plan: Plan | undefined): ReadonlyMap<string, number> {
  const byTest = new Map<string, number>();
  const visit = ({ test, minutes, next }: Plan): void => {
    byTest.set(test, (byTest.get(test) ?? 0) + minutes);
    for (const plan of Object.values(next)) visit(plan);
  };
  if (plan) visit(plan);
  return byTest;
}
