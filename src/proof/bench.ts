import { FAULT_FLOWS, type FaultFlow } from '../case/flows.ts';
import { CAUSES } from '../causes/all.ts';
import { BUILD_KINDS, fixedRigs } from '../survey/fixed-rigs.ts';
import type { WholeRig } from '../survey/random-rig.ts';
import { surveyOf } from '../survey/survey-of.ts';
import type { ComplaintId } from '../world/symptoms/index.ts';
import { type BenchFlow, type FlowCost, flowCost } from './flow-cost.ts';

export interface Benched {
  /** Expected minutes to an end, over the weights of the flow's faults and some twenty bikes. */
  readonly minutes: number;
  /**
   * The least that any order of the same steps takes, with the same conditions and safety, until no two causes are left that
   * end differently. It takes every answer for true and knows of every cause, so it never asks to be sure: what the flow
   * spends on answers that may be wrong, on what nobody thought of, and on proof, is above it.
   */
  readonly least: number;
  readonly ratio: number;
  /** False when `least` is a bound that no order can be below, for at least one of the bikes. */
  readonly exact: boolean;
  /** The same of each step, the greatest loss first. */
  readonly steps: readonly { readonly step: string; readonly minutes: number; readonly least: number }[];
}

/** What the page of a flow makes a phone fetch and wait for. */
export interface PageFigures {
  /** Script until the second question, and altogether. */
  readonly bytesFirst: number;
  readonly bytesAll: number;
  /** From an answer to the next question, on a slowed processor. */
  readonly answerMs?: { readonly median: number; readonly p95: number };
  /** From the navigation, on a slow line. */
  readonly slowLineMs?: { readonly firstPaint: number; readonly firstTap: number; readonly secondQuestion: number };
}

const RIGS_PER_KIND = 4;
const TWENTY_BIKES = (): readonly WholeRig[] => BUILD_KINDS.flatMap((kind) => fixedRigs(kind, RIGS_PER_KIND));

/** A cause goes by one name in a fault flow, whatever is complained of. */
const complaintOf = ({ complaints }: FaultFlow): ComplaintId => Object.keys(complaints)[0] as ComplaintId;

/** A flow of the list, made ready to be benched. */
export async function benchFlow(listed: FaultFlow): Promise<BenchFlow> {
  const flow = await listed.load();
  const { causeOf } = surveyOf(listed, flow, CAUSES, 0);
  return {
    stage: { flow, late: await listed.late() },
    complaints: listed.complaints,
    nameOf: (fault, rig) => causeOf(fault, complaintOf(listed), rig),
  };
}

interface Weighed {
  readonly share: number;
  readonly cost: FlowCost;
}

/** What each complaint costs on a bike that can have it, with its share of the callers of that bike. */
function costsOn(flow: BenchFlow, rig: WholeRig): readonly Weighed[] {
  const costs = Object.entries(flow.complaints).flatMap(([complaint, share]): Weighed[] => {
    const cost = flowCost(flow, complaint as ComplaintId, rig);
    return cost ? [{ share, cost }] : [];
  });
  const total = costs.reduce((sum, { share }) => sum + share, 0);
  return costs.map(({ share, cost }) => ({ share: share / total, cost }));
}

export function benchOf(flow: BenchFlow, rigs: readonly WholeRig[]): Benched {
  const bikes = rigs.map((rig) => costsOn(flow, rig)).filter((costs) => costs.length > 0);
  const costs = bikes.flat();
  const mean = (of: (cost: FlowCost) => number): number =>
    costs.reduce((sum, { share, cost }) => sum + share * of(cost), 0) / bikes.length;
  const steps = [...new Set(costs.flatMap(({ cost }) => [...cost.byStep.keys()]))].map((step) => ({
    step,
    minutes: mean(({ byStep }) => byStep.get(step)?.flow ?? 0),
    least: mean(({ byStep }) => byStep.get(step)?.least ?? 0),
  }));
  const [minutes, least] = [mean((cost) => cost.minutes), mean((cost) => cost.least)];
  return {
    minutes,
    least,
    ratio: minutes / least,
    exact: costs.every(({ cost }) => cost.exact),
    steps: steps.toSorted((a, b) => b.minutes - b.least - (a.minutes - a.least)),
  };
}

/** Every flow that is proved, by id. */
export async function bench(rigs = TWENTY_BIKES(), flows = FAULT_FLOWS): Promise<Readonly<Record<string, Benched>>> {
  const benched: [string, Benched][] = [];
  for (const [id, listed] of flows) benched.push([id, benchOf(await benchFlow(listed), rigs)]);
  return Object.fromEntries(benched);
}

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

const inWhole = <T extends Readonly<Record<string, number>>>(figures: T | undefined): T | undefined =>
  figures && (Object.fromEntries(Object.entries(figures).map(([name, value]) => [name, rounded(value, 0)])) as T);

/** The figures to keep and to compare. What a page weighs, and how fast it is, is there where the site was built. */
export function benchJson(
  benched: Readonly<Record<string, Benched>>,
  pages: Readonly<Record<string, PageFigures>>,
  search?: Readonly<Record<'written' | 'drawn' | 'fieldAlone', { readonly median: number; readonly p95: number }>>,
): string {
  const figuresOf = (id: string) => {
    const minutes = benched[id];
    const page = pages[id];
    return {
      ...(minutes && {
        minutes: rounded(minutes.minutes, 2),
        least: rounded(minutes.least, 2),
        ratio: rounded(minutes.ratio, 3),
        exact: minutes.exact,
      }),
      ...(page && { ...page, answerMs: inWhole(page.answerMs), slowLineMs: inWhole(page.slowLineMs) }),
    };
  };
  const ids = [...new Set([...Object.keys(benched), ...Object.keys(pages)])];
  const flows = Object.fromEntries(ids.map((id) => [id, figuresOf(id)]));
  return JSON.stringify({
    flows,
    ...(search && { searchKeyMs: inWhole(search.written), searchDrawnMs: inWhole(search.drawn) }),
  });
}
