import { comesAfter, HISTORY, minutesOf, SETUPS, setupsOf } from '../diagnosis/cost.ts';
import { leastCost, MOST_SUSPECTS, minutesByTest, type Plan, type Problem } from '../diagnosis/least-cost.ts';
import { drawFrom } from '../observe/draw.ts';
import { observe } from '../observe/index.ts';
import { fedFromRear } from '../steps/fitted/fed-from.ts';
import { findingsOver, learnedRig, outcomeOf } from '../steps/outcome.ts';
import type { Facts, Situation, Step } from '../steps/step.ts';
import type { Verdict } from '../verdicts/verdict.ts';
import { FAULTS, keyOf, severityAt, weightOf } from '../world/faults/index.ts';
import { EXACT_METER } from '../world/meter.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { askThrough, type Concluded } from './ask.ts';
import { bikesOf, type Present } from './bikes.ts';
import type { ProvedFlow } from './flows.ts';
import type { Observe } from './play.ts';
import type { WholeRig } from './random-rig.ts';
import { hasFault, standsFor } from './stands-for.ts';
import { UNLISTED, UNLISTED_SHARE } from './unlisted.ts';

/** Minutes of a flow on one bike, and the least that any order of its steps could take. */
export interface FlowCost {
  readonly minutes: number;
  readonly least: number;
  readonly exact: boolean;
  /** The cheapest order; undefined when only a bound is known. */
  readonly plan: Plan | undefined;
  /** Expected minutes of each step, in the flow and in the best order. */
  readonly byStep: ReadonlyMap<string, { readonly flow: number; readonly least: number }>;
  /** How each cause is found, by the flow and in the best order. */
  readonly ways: readonly Way[];
}

/** One cause, as one person finds it. */
export interface Way {
  readonly cause: string;
  readonly shareRatio: number;
  readonly verdict: string;
  readonly flow: readonly Told[];
  readonly best: readonly Told[];
}
/** A step, and what it told. */
interface Told {
  readonly step: Step;
  readonly outcome: string;
}

/** One way in which the bike can have the complaint, as one of several people finds it. */
interface Cause {
  readonly present: Present;
  readonly weight: number;
  readonly bike: Ridden;
  readonly sees: Observe;
}

/** How many people look at each bike, if the search can take so many: what a finger happens to move differs. */
const MOST_LOOKS = 3;

function causesOn({ id }: ProvedFlow, rig: WholeRig, looks: number): readonly Cause[] {
  const bikes = bikesOf(rig);
  const weighed = FAULTS.flatMap((fault) => {
    const weight = weightOf(fault, id);
    const present = { fault, severity: severityAt(fault, 0.5) };
    return weight && fault.fits(bikes.healthy) && bikes.complains(id, [present]) ? [{ present, weight }] : [];
  });
  const share = (UNLISTED_SHARE / UNLISTED.length) * sum(weighed.map(({ weight }) => weight));
  const unlisted = UNLISTED.map((fault) => ({ present: { fault, severity: 0 }, weight: share }));
  const all = [...weighed, ...unlisted.filter(({ weight, present }) => weight > 0 && bikes.complains(id, [present]))];
  return all.flatMap(({ present, weight }) => {
    const { fault } = present;
    const bike = bikes.with([present]);
    return Array.from({ length: looks }, (_, look): Cause => {
      // The same step shows the same person the same, whenever it is asked.
      const draw = (step: Step) => drawFrom('bench', rig.batteryAh, keyOf(fault), look, step.id);
      const sees: Observe = (step, at, situation) =>
        observe(step, at, situation, { meter: EXACT_METER, draw: draw(step) });
      return { present, weight: weight / looks, bike, sees };
    });
  });
}

/** Outcomes that say the same about every cause. */
const SAME: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'rear-control': { none: 'no-change' },
  'lid-check': { 'no-plug': 'no-effect' },
  // An amplifier without fuses of its own has none that is open, and a short that is still there trips again either way.
  'body-fuse': { none: 'whole' },
  recover: { 'key-cycle': 'stays' },
};

/** What a cause shows at each step, in the condition that the step asks for. The past rules nothing out. */
function outcomesOf(steps: readonly Step[], rig: WholeRig, { bike, sees }: Cause): ReadonlyMap<string, string> {
  const early = (step: Step) => step.kind === 'rig' || step.id === 'tools-at-hand' || step.id === 'meter-digit';
  let facts: Facts = {};
  for (const step of steps.filter(early)) facts = { ...facts, [step.id]: sees(step, bike, { rig, facts }) };
  const base: Situation = { rig: learnedRig(rig, steps, facts), facts };
  return new Map(
    steps.map((step) => {
      if (HISTORY.includes(step.id)) return [step.id, 'told'] as const;
      const answer = facts[step.id] ?? sees(step, bike, base);
      const outcome = outcomeOf(step, { ...base, facts: { ...facts, [step.id]: answer } }) ?? 'cannot';
      return [step.id, SAME[step.id]?.[outcome] ?? outcome] as const;
    }),
  );
}

/** Causes that show the same at every step and are named by the same verdicts are one suspect. */
interface Shown {
  readonly weight: number;
  readonly outcomes: ReadonlyMap<string, string>;
  readonly classes: readonly number[];
}

function shownOf(proved: ProvedFlow, rig: WholeRig, causes: readonly Cause[], ends: readonly Concluded[]) {
  const all = [...proved.flow.steps.values()];
  // One verdict stands for all the faults that it names, and for those whom it hands over to the flow that finds them. A
  // list of whoever is left stands for nothing.
  const findings = findingsOver(proved.flow.steps);
  const goesOn = (end: Concluded) => end.verdict.handsOver?.(findings(end)) !== undefined;
  const handing = new Set(ends.filter(goesOn));
  const handedBy = (verdict: Verdict): readonly string[] =>
    causes.flatMap(({ present }, i) => {
      const end = ends[i];
      return end && handing.has(end) && end.verdict === verdict ? [present.fault.id] : [];
    });
  const classes = ends
    .filter((end) => end.verdict.faults.length > 0 || handing.has(end))
    .map((end) => {
      const { own, listed } = standsFor(proved, end.verdict, end.remedy);
      return [...own, ...listed.flat(), ...(handing.has(end) ? handedBy(end.verdict) : [])];
    });
  const named = [...new Map(classes.map((faults) => [faults.toSorted().join(), faults] as const)).values()];
  const shown = causes.map(
    (cause): Shown => ({
      weight: cause.weight,
      outcomes: outcomesOf(all, rig, cause),
      classes: named.flatMap((faults, i) => (hasFault(faults, cause.present.fault) ? [i] : [])),
    }),
  );
  return { shown, classCount: named.length };
}

function problemOf({ flow }: ProvedFlow, rig: WholeRig, { shown, classCount }: ReturnType<typeof shownOf>): Problem {
  const all = [...flow.steps.values()];
  const alike = Map.groupBy(shown, ({ outcomes, classes: own }) => JSON.stringify([[...outcomes], own]));
  const suspects = [...alike.values()].map((own) => ({
    ...(own[0] as Shown),
    weight: sum(own.map((one) => one.weight)),
  }));
  const outcomesAt = ({ id }: Step) => suspects.map(({ outcomes }) => outcomes.get(id) ?? 'cannot');
  // What "my bike" knows is not asked, and what cannot be done on this bike tells nothing.
  const steps = all.filter((step) => step.kind !== 'rig' && outcomesAt(step).some((outcome) => outcome !== 'cannot'));
  const sentByRear = fedFromRear({ rig, facts: {} });
  const asked = new Map(steps.map((step) => [step.id, step] as const));
  return {
    weights: suspects.map(({ weight }) => weight),
    tests: steps.map((step) => ({
      id: step.id,
      minutes: step.minutes,
      setups: setupsOf(step).map(({ id }) => id),
      // An amplifier that takes everything from the front does not care whether the rear pairs send.
      after: comesAfter(step, asked).filter((id) => id !== 'rear-pair' || sentByRear),
      outcomes: outcomesAt(step),
    })),
    setupMinutes: Object.fromEntries(SETUPS.map(({ id, minutes }) => [id, minutes])),
    classes: Array.from({ length: classCount }, (_, i) =>
      suspects.flatMap(({ classes: own }, at) => (own.includes(i) ? [at] : [])),
    ),
  };
}

function expected(causes: readonly Cause[], ends: readonly Concluded[], total: number): ReadonlyMap<string, number> {
  const byStep = new Map<string, number>();
  for (const [i, { asked }] of ends.entries()) {
    const steps = asked.map(({ step }) => step);
    for (const [n, step] of steps.entries()) {
      const own = minutesOf(steps.slice(0, n + 1)) - minutesOf(steps.slice(0, n));
      byStep.set(step.id, (byStep.get(step.id) ?? 0) + (own * (causes[i]?.weight ?? 0)) / total);
    }
  }
  return byStep;
}

const sum = (of: Iterable<number>): number => [...of].reduce((so, one) => so + one, 0);

/** The flow on a bike, asked by so many people of each cause. */
function asked(proved: ProvedFlow, rig: WholeRig, looks: number) {
  const causes = causesOn(proved, rig, looks);
  const ends = causes.map(({ bike, sees }) => {
    const end = askThrough(proved.flow, { rig, facts: {} }, (step, situation) => sees(step, bike, situation));
    if ('stoppedAt' in end) throw new Error('nobody stopped it');
    return end;
  });
  const shown = shownOf(proved, rig, causes, ends);
  return { causes, ends, shown: shown.shown, problem: problemOf(proved, rig, shown) };
}

/** The best order, walked by one cause. */
function walked(proved: ProvedFlow, plan: Plan | undefined, shown: Shown): readonly Told[] {
  const step = plan && proved.flow.steps.get(plan.test);
  if (!step) return [];
  const outcome = shown.outcomes.get(step.id) ?? 'cannot';
  return [{ step, outcome }, ...walked(proved, plan.next[outcome], shown)];
}

/**
 * What a flow costs on a bike, over everything that can be behind the complaint. Undefined where nothing can. Where there
 * are more suspects than the search takes, fewer people look; if it is one only, the search knows beforehand what his
 * finger will move, and what it finds is no more than a bound.
 */
export function flowCost(proved: ProvedFlow, rig: WholeRig, mostStates?: number): FlowCost | undefined {
  let looks = MOST_LOOKS;
  let found = asked(proved, rig, looks);
  while (found.problem.weights.length > MOST_SUSPECTS && looks > 1) found = asked(proved, rig, --looks);
  if (found.causes.length === 0) return undefined;
  const total = sum(found.causes.map(({ weight }) => weight));
  const flow = expected(found.causes, found.ends, total);
  const best = leastCost(found.problem, mostStates);
  // What is fitted, and no bike of the list can say, is asked before anything else in any order.
  const rigSteps = [...flow.keys()].filter((id) => proved.flow.steps.get(id)?.kind === 'rig');
  const told = rigSteps.map((id) => [id, flow.get(id) ?? 0] as const);
  const leastBy = new Map([...told, ...minutesByTest(best.plan)]);
  const steps = new Set([...flow.keys(), ...leastBy.keys()]);
  return {
    minutes: sum(flow.values()),
    least: best.minutes + sum(told.map(([, minutes]) => minutes)),
    exact: best.exact && looks > 1,
    plan: best.plan,
    byStep: new Map([...steps].map((id) => [id, { flow: flow.get(id) ?? 0, least: leastBy.get(id) ?? 0 }])),
    ways: found.causes.map(({ present, weight }, i) => ({
      cause: keyOf(present.fault),
      shareRatio: weight / total,
      verdict: found.ends[i]?.verdict.id ?? '',
      flow: found.ends[i]?.asked ?? [],
      best: walked(proved, best.plan, found.shown[i] as Shown),
    })),
  };
}
