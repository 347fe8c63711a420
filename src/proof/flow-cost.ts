import type { Step } from '../steps/step.ts';
import type { WholeRig } from '../survey/random-rig.ts';
import { type Fault, keyOf } from '../world/faults/index.ts';
import type { ComplaintId } from '../world/symptoms/index.ts';
import { type Asked, askThrough, type Told } from './flow-cost-asked.ts';
import { callersOn, riderOf } from './flow-cost-callers.ts';
import { namedIn, problemOf } from './flow-cost-problem.ts';
import { leastCost, minutesByTest, type Plan } from './least-cost.ts';
import type { Stage } from './play.ts';

/** A flow as it is benched: with what its page fetches late, and the cause that stands for a fault in it. */
export interface BenchFlow {
  readonly stage: Stage;
  readonly complaints: Readonly<Record<string, number>>;
  nameOf(fault: Fault, rig: WholeRig): string | undefined;
}

/** Minutes of a flow on one bike, and the least that any order of its steps could take. */
export interface FlowCost {
  readonly minutes: number;
  readonly least: number;
  readonly exact: boolean;
  /** Expected minutes of each step, in the flow and in the best order. Second looks are only in the flow. */
  readonly byStep: ReadonlyMap<string, { readonly flow: number; readonly least: number }>;
  /** How each cause is found, by the flow and in the best order. */
  readonly ways: readonly Way[];
}

/** One cause, as one person finds it. */
export interface Way {
  readonly fault: string;
  readonly shareRatio: number;
  /** What the flow names first in its end. */
  readonly ends: string;
  readonly flow: readonly Told[];
  readonly best: readonly Pick<Told, 'step' | 'outcome'>[];
}

const sum = (of: Iterable<number>): number => [...of].reduce((so, one) => so + one, 0);

const nameOfStep = ({ step, again }: Told): string => (again ? `again ${step.id}` : step.id);

/** The best order, walked by one cause. */
function walked(
  steps: ReadonlyMap<string, Step>,
  plan: Plan | undefined,
  outcomes: ReadonlyMap<string, string>,
): Way['best'] {
  const step = plan && steps.get(plan.test);
  if (!step) return [];
  const outcome = outcomes.get(step.id) ?? '';
  return [{ step, outcome }, ...walked(steps, plan.next[outcome], outcomes)];
}

/** What a flow costs on a bike, over everything that can be behind a complaint. Undefined where nothing can. */
export function flowCost(
  { stage, nameOf }: BenchFlow,
  complaint: ComplaintId,
  rig: WholeRig,
  mostStates?: number,
): FlowCost | undefined {
  const callers = callersOn(complaint, rig);
  if (callers.length === 0) return undefined;
  const ends = callers.map(({ bike }) => askThrough(stage, rig, bike, riderOf(rig)));
  const { problem, outcomesOf } = problemOf(stage, rig, callers, ends, (fault) => nameOf(fault, rig));
  const total = sum(callers.map(({ weight }) => weight));
  const shareOf = (i: number) => (callers[i]?.weight ?? 0) / total;
  const byFlow = new Map<string, number>();
  for (const [i, { told }] of ends.entries())
    for (const one of told) {
      const name = nameOfStep(one);
      byFlow.set(name, (byFlow.get(name) ?? 0) + one.minutes * shareOf(i));
    }
  const best = leastCost(problem, mostStates);
  // What is fitted and told is asked before anything else in any order.
  const { steps, inOrder } = stage.flow;
  const first = inOrder.map(({ id }) => [id, byFlow.get(id) ?? 0] as const).filter(([, minutes]) => minutes > 0);
  const byBest = new Map([...first, ...minutesByTest(best.plan)]);
  const names = new Set([...byFlow.keys(), ...byBest.keys()]);
  return {
    minutes: sum(byFlow.values()),
    least: best.minutes + sum(first.map(([, minutes]) => minutes)),
    exact: best.exact,
    byStep: new Map([...names].map((id) => [id, { flow: byFlow.get(id) ?? 0, least: byBest.get(id) ?? 0 }])),
    ways: callers.map(({ fault }, i) => {
      const end = ends[i] as Asked;
      return {
        fault: keyOf(fault),
        shareRatio: shareOf(i),
        ends: namedIn(end) ?? 'nothing',
        flow: end.told,
        best: walked(steps, best.plan, outcomesOf[i] ?? new Map()),
      };
    }),
  };
}
