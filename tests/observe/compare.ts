import { observe } from '../../src/observe/index.ts';
import type { Observer } from '../../src/observe/observer.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { outcomeOf } from '../../src/steps/outcome.ts';
import type { Facts, Step } from '../../src/steps/step.ts';
import { FAULTS, type Fault, keyOf, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { EXACT_METER } from '../../src/world/meter.ts';
import { COMPLAINTS, type FlowId, type Ridden, ridden } from '../../src/world/symptoms/index.ts';

/** A test of the hand-made matrix, as one of our steps: which, and how its outcomes are called there. */
export interface Named {
  readonly step: Step;
  /** Ours to theirs. An outcome that is missing has the same name in both. */
  readonly words?: Readonly<Record<string, string>>;
  /** Outcomes of theirs that our step does not tell apart: the one that stands for both. */
  readonly coarse?: Readonly<Record<string, string>>;
  /** Steps that are answered before it. */
  readonly after?: readonly Step[];
}
/** A row of the hand-made matrix, as faults of ours, and the bikes that its case is about. */
export interface RowMeans {
  readonly faults: readonly string[];
  readonly on?: (rig: Rig) => boolean;
}
/** What a bike with a fault shows, by fault and test. */
export type Cells = ReadonlyMap<string, ReadonlyMap<string, string>>;

/** The table by row and column, as it is written. */
export function parse(matrix: string): Cells {
  const [head = [], , ...rows] = matrix
    .trim()
    .split('\n')
    .map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim().replaceAll('`', '')),
    );
  return new Map(
    rows.map(([fault = '', , ...cells]) => [
      fault,
      new Map(cells.map((cell, i) => [head[i + 2] ?? '', cell] as const)),
    ]),
  );
}

/** The same numbers for the same seed, from 0 to 1. Source: mulberry32, public domain, from memory. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const METER_FACTS: Facts = { 'meter-digit': { option: '0.001' } };

/** What a bike shows at one step, in our words. */
export function outcomeAt({ step, after = [] }: Named, bike: Ridden, observer: Observer): string {
  const { rig } = bike.world;
  let facts = METER_FACTS;
  for (const next of [...after, step]) facts = { ...facts, [next.id]: observe(next, bike, { rig, facts }, observer) };
  return outcomeOf(step, { rig, facts }) ?? 'unusable';
}

const faultOf = (key: string): Fault => {
  const fault = FAULTS.find((one) => keyOf(one) === key);
  if (!fault) throw new Error(`no such fault: ${key}`);
  return fault;
};

/** The bikes of a row: each fixed rig that fits it, has the complaint, and is of the case. */
export function bikesOf(flow: FlowId, { faults, on = () => true }: RowMeans, rigs: readonly Rig[]): readonly Ridden[] {
  return faults.map(faultOf).flatMap((fault) =>
    rigs.filter(on).flatMap((rig, i) => {
      const healthy = healthyWorld(rig);
      if (!fault.fits(healthy)) return [];
      const bike = ridden(fault.apply(healthy, severityAt(fault, (i * 0.37) % 1)));
      return COMPLAINTS[flow](bike) === 'yes' ? [bike] : [];
    }),
  );
}

/** Ears and fingers meet chance; an exact meter does not. */
const SEEDS = { many: [1, 2, 3, 4, 5, 6, 7, 8], one: [1] };

/** What the bikes of a row show at a test, in the words of the matrix. `cannot` only where none of them can. */
export function shownAt(named: Named, bikes: readonly Ridden[]): ReadonlySet<string> {
  const { step, words = {} } = named;
  const shown = new Set(
    bikes.flatMap((bike) =>
      SEEDS[step.kind === 'choice' ? 'many' : 'one'].map((seed) =>
        outcomeAt(named, bike, { meter: EXACT_METER, draw: seeded(seed) }),
      ),
    ),
  );
  // Who has no amplifier says so where he may, and cannot where he may not.
  const can = [...shown]
    .filter((outcome) => outcome !== 'cannot' && outcome !== 'no-amp')
    .map((outcome) => words[outcome] ?? outcome);
  return new Set(can.length > 0 ? can : ['n/a']);
}

export interface Difference {
  readonly fault: string;
  readonly test: string;
  readonly hand: string;
  readonly circuit: string;
}
export const inOrder = (outcomes: Iterable<string>): string => [...outcomes].toSorted().join('/');

/** Cells in which hand and circuit do not show the same outcomes. */
export function differences(
  flow: FlowId,
  cells: Cells,
  rows: Readonly<Record<string, RowMeans>>,
  tests: Readonly<Record<string, Named>>,
  rigs: readonly Rig[],
): readonly Difference[] {
  return [...cells].flatMap(([fault, row]) => {
    const means = rows[fault];
    if (!means) return [{ fault, test: '', hand: 'a row', circuit: 'unknown' }];
    const bikes = bikesOf(flow, means, rigs);
    if (bikes.length === 0) return [{ fault, test: '', hand: 'a row', circuit: 'no bike has this complaint' }];
    return Object.entries(tests).flatMap(([test, named]) => {
      const hand = row.get(test) ?? '';
      if (hand === 'any') return [];
      const circuit = inOrder(shownAt(named, bikes));
      // "n/a" beside an outcome: some bikes of the row cannot do it, and the others show that.
      const said =
        hand === 'n/a'
          ? [hand]
          : hand
              .replace('/n/a', '')
              .split('/')
              .map((one) => named.coarse?.[one] ?? one);
      return circuit === inOrder(new Set(said)) ? [] : [{ fault, test, hand, circuit }];
    });
  });
}

/** A difference on which was decided, for one row or several: who is right, and why. */
export interface Decision extends Omit<Difference, 'fault'> {
  readonly faults: readonly string[];
  readonly why: string;
}

/** Decisions by cell, in the order of the matrix, so that they can be held against what differs. */
export function byCell(decisions: readonly Decision[], cells: Cells): readonly Difference[] {
  const all = decisions.flatMap(({ faults, test, hand, circuit }) =>
    faults.map((fault) => ({ fault, test, hand, circuit })),
  );
  const place = ({ fault, test }: Difference) => {
    const rows = [...cells.keys()];
    const columns = [...(cells.get(fault)?.keys() ?? [])];
    return rows.indexOf(fault) * 1000 + columns.indexOf(test);
  };
  return all.toSorted((a, b) => place(a) - place(b));
}
