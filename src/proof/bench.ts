import { BUILD_KINDS, fixedRigs } from './fixed-rigs.ts';
import { type FlowCost, flowCost } from './flow-cost.ts';
import { PROVED_FLOWS, type ProvedFlow } from './flows.ts';

export interface Benched {
  /** Expected minutes to a verdict, over the weights of the flow's faults and some twenty bikes. */
  readonly minutes: number;
  /** The least that any order of the same steps takes, with the same set-ups and orders, up to the same verdicts. */
  readonly least: number;
  readonly ratio: number;
  /** False when `least` is a bound that no order can be below, for at least one of the bikes. */
  readonly exact: boolean;
  /** The same of each step, the greatest loss first. */
  readonly steps: readonly { readonly step: string; readonly minutes: number; readonly least: number }[];
}

const RIGS_PER_KIND = 4;

const mean = (values: readonly number[]): number => values.reduce((so, one) => so + one, 0) / values.length;

export function benchOf(proved: ProvedFlow, rigsPerKind = RIGS_PER_KIND): Benched {
  const costs = BUILD_KINDS.flatMap((kind) => fixedRigs(kind, rigsPerKind)).flatMap((rig): FlowCost[] => {
    const cost = flowCost(proved, rig);
    return cost ? [cost] : [];
  });
  const steps = [...new Set(costs.flatMap(({ byStep }) => [...byStep.keys()]))].map((step) => ({
    step,
    minutes: mean(costs.map(({ byStep }) => byStep.get(step)?.flow ?? 0)),
    least: mean(costs.map(({ byStep }) => byStep.get(step)?.least ?? 0)),
  }));
  const [minutes, least] = [mean(costs.map((one) => one.minutes)), mean(costs.map((one) => one.least))];
  return {
    minutes,
    least,
    ratio: minutes / least,
    exact: costs.every(({ exact }) => exact),
    steps: steps.toSorted((a, b) => b.minutes - b.least - (a.minutes - a.least)),
  };
}

/** Every flow that can be proved, by id. */
export const bench = (rigsPerKind?: number): Readonly<Record<string, Benched>> =>
  Object.fromEntries(
    PROVED_FLOWS.filter(({ beside }) => !beside).map((proved) => [proved.id, benchOf(proved, rigsPerKind)]),
  );
