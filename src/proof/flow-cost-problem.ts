import { elsewhere } from '../../machines/elsewhere.ts';
import { conditionOf } from '../steps/conditions.ts';
import type { Step } from '../steps/step.ts';
import type { WholeRig } from '../survey/random-rig.ts';
import type { Fault } from '../world/faults/index.ts';
import type { Asked } from './flow-cost-asked.ts';
import { type Caller, type Shown, shownBy } from './flow-cost-callers.ts';
import type { Problem } from './least-cost.ts';
import type { Stage } from './play.ts';

/** What a caller shows at a step that makes no sense to him at any time. */
const NO_SENSE = 'makes no sense';

/** Callers that show the same at every step and end alike are one suspect. */
export interface Suspect {
  readonly weight: number;
  readonly shown: Shown;
  readonly outcomes: ReadonlyMap<string, string>;
  /** The causes that need not be told apart for it: its own, and what the flow names first. */
  readonly names: readonly string[];
}

/** The first that an end names. */
export function namedIn({ end: { open } }: Asked): string | undefined {
  if (open.kind === 'cause') return open.cause;
  return open.kind === 'onward' ? elsewhere(open.to.flow) : open.kind === 'list' ? open.causes[0] : undefined;
}

const outcomeAt = (shown: Shown, step: Step): string =>
  shown.atFirst(step) || shown.atLast(step) ? shown.outcome(step) : NO_SENSE;

/** Steps without which one never makes sense, to nobody to whom it does: they come before it in any order. */
function neededFor(step: Step, others: readonly Step[], suspects: readonly Suspect[]): readonly string[] {
  const asked = suspects.filter(({ shown }) => shown.atLast(step));
  if (!step.sensible || asked.length === 0 || asked.some(({ shown }) => shown.atFirst(step))) return [];
  return others.flatMap(({ id }) => (asked.every(({ shown }) => !shown.atLast(step, id)) ? [id] : []));
}

/** Whether the flow asked a step of somebody of whom it had not asked the other: what is known later would have ruled it out. */
const wasAskedWithout = (ends: readonly Asked[], step: string, other: string): boolean =>
  ends.some(({ told }) => {
    const at = told.findIndex((one) => one.step.id === step);
    return at >= 0 && !told.slice(0, at).some((one) => one.step.id === other);
  });

/**
 * The search's problem: the steps of a flow that a bike allows, what each caller would show, and what comes before what, for
 * safety and for sense. Where a constraint holds for some callers only it is left out, so that what is found stays a bound
 * that no order can be below.
 */
export function problemOf(
  { flow }: Stage,
  rig: WholeRig,
  callers: readonly Caller[],
  ends: readonly Asked[],
  nameOf: (fault: Fault) => string | undefined,
): { readonly problem: Problem; readonly outcomesOf: readonly Suspect['outcomes'][] } {
  const found = callers.map((caller, i): Suspect => {
    const shown = shownBy(flow, rig, caller);
    const end = ends[i];
    return {
      weight: caller.weight,
      shown,
      outcomes: new Map(flow.asked.map((step) => [step.id, outcomeAt(shown, step)])),
      names: [...new Set([nameOf(caller.fault), end && namedIn(end)].flatMap((name) => name ?? []))],
    };
  });
  const alike = Map.groupBy(found, ({ outcomes, names }) => JSON.stringify([[...outcomes.values()], names]));
  const suspects = [...alike.values()].map(
    (own): Suspect => ({
      ...(own[0] as Suspect),
      weight: own.reduce((sum, { weight }) => sum + weight, 0),
    }),
  );
  const outcomesAt = ({ id }: Step) => suspects.map(({ outcomes }) => outcomes.get(id) ?? NO_SENSE);
  // What is fitted is known of the bike, and what nobody can do or makes no sense to anybody tells nothing.
  const steps = flow.asked.filter(
    (step) => step.kind !== 'rig' && outcomesAt(step).some((outcome) => outcome !== 'cannot' && outcome !== NO_SENSE),
  );
  const askedOf = (step: Step): readonly Suspect[] =>
    suspects.filter(({ outcomes }) => outcomes.get(step.id) !== NO_SENSE);
  const tests = steps.map((step) => {
    const safe = flow.before(step.id).filter((id) => {
      const first = steps.find((other) => other.id === id);
      return first && askedOf(step).every(({ outcomes }) => outcomes.get(first.id) !== NO_SENSE);
    });
    const meter = step.tool === 'meter' && steps.some(({ id }) => id === 'tools-at-hand') ? ['tools-at-hand'] : [];
    const others = steps.filter((other) => other !== step);
    const first = [...safe, ...meter, ...neededFor(step, others, suspects)];
    return {
      id: step.id,
      minutes: step.minutes,
      setups: (step.conditions ?? []).filter((id) => conditionOf(id).minutes > 0),
      after: [...new Set(first)].filter((id) => !wasAskedWithout(ends, step.id, id)),
      outcomes: outcomesAt(step),
    };
  });
  const names = [...new Set(suspects.flatMap((suspect) => suspect.names))];
  const classes = names.map((name) => suspects.flatMap((suspect, at) => (suspect.names.includes(name) ? [at] : [])));
  const setupMinutes = Object.fromEntries(
    steps.flatMap(({ conditions = [] }) => conditions.map((id) => [id, conditionOf(id).minutes])),
  );
  return {
    problem: { weights: suspects.map(({ weight }) => weight), tests, setupMinutes, classes },
    outcomesOf: found.map(({ outcomes }) => outcomes),
  };
}
