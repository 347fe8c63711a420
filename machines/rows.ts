import { assign, createMachine } from 'xstate';
import type { PlanRemedy, PlanVerdict } from '../src/plan/verdict.ts';
import type { Rig } from '../src/rig/rig.ts';
import { type Findings, findingsOver, learnedRig, outcomeOf } from '../src/steps/outcome.ts';
import type { Answer, Facts, OutcomeOf, Step } from '../src/steps/step.ts';

/** What a flow knows: the bike, and the answers so far. Nothing derived is kept. */
export interface FlowContext {
  readonly rig: Rig;
  readonly facts: Facts;
  /** Steps whose answers were given, or looked at, a second time. */
  readonly checked?: ReadonlySet<string>;
}
/** The one event of every flow. Changing an answer, repairs and notes belong to the case, which replays the flow. */
export type FlowEvent = { readonly type: 'answer'; readonly step: string; readonly answer: Answer };

/** A plain claim about what is known, checked when a route depends on more than the outcome of its own step. */
export interface Claim {
  readonly says: string;
  holds(findings: Findings): boolean;
}
/** @__NO_SIDE_EFFECTS__ */
export const claim = (says: string, holds: Claim['holds']): Claim => ({ says, holds });

/** Where an outcome leads: a state, or the first state of a list whose claim holds. A list ends without a claim. */
export type Route = string | readonly Branch[];
export type Branch = { readonly when: Claim; readonly to: string } | { readonly to: string };

export type FlowState =
  | { readonly ask: Step; readonly routes: Readonly<Record<string, Route>> }
  | { readonly decide: readonly Branch[] }
  | { readonly again: Again; readonly otherwise: Route }
  | { readonly verdict: PlanVerdict }
  /** The rows from here on have not arrived yet. */
  | { readonly waits: true };

/** The step whose answer is to be given once more, or none. */
export type Again = (findings: Findings) => Step | undefined;

/**
 * A state that asks: every outcome of the step, and "I can't", must lead somewhere, or it does not compile.
 * @__NO_SIDE_EFFECTS__
 */
export const ask = <S extends Step>(step: S, routes: Readonly<Record<OutcomeOf<S> | 'cannot', Route>>): FlowState => ({
  ask: step as unknown as Step,
  routes,
});
/**
 * A state that asks, and goes on to the same place whatever the answer.
 * @__NO_SIDE_EFFECTS__
 */
export const askThen = <S extends Step>(step: S, next: Route): FlowState => {
  const outcomes: readonly string[] = [...Object.keys(step.outcomes), 'cannot'];
  return ask(step, Object.fromEntries(outcomes.map((outcome) => [outcome, next])) as Parameters<typeof ask<S>>[1]);
};
/** A state that asks nothing: the first branch whose claim holds is taken.
 * @__NO_SIDE_EFFECTS__
 */
export const decide = (...branches: readonly Branch[]): FlowState => ({ decide: branches });
/** A state that has answers given once more, one after the other, until none is left to ask for.
 * @__NO_SIDE_EFFECTS__
 */
export const askAgain = (again: Again, otherwise: Route): FlowState => ({ again, otherwise });
/** A state that ends the flow.
 * @__NO_SIDE_EFFECTS__
 */
export const conclude = (verdict: PlanVerdict): FlowState => ({ verdict });

export interface FlowMeta {
  readonly step?: Step;
  readonly again?: Again;
  readonly verdict?: PlanVerdict;
}

/** What the machines are typed by. */
const TYPES = {} as {
  context: FlowContext;
  events: FlowEvent;
  input: FlowContext;
  output: { readonly verdict: string; readonly remedy: PlanRemedy };
  meta: FlowMeta;
};

const branchesOf = (route: Route): readonly Branch[] => (typeof route === 'string' ? [{ to: route }] : route);
const finalOutput = (event: unknown) => (event as { output: { verdict: string; remedy: PlanRemedy } }).output;

type InContext = { readonly context: FlowContext };

/** The steps that the states of a flow ask, by id. */
export const stepsOf = (states: Readonly<Record<string, FlowState>>): ReadonlyMap<string, Step> =>
  new Map(Object.values(states).flatMap((state) => ('ask' in state ? [[state.ask.id, state.ask] as const] : [])));

/**
 * Builds the XState machine of a flow. A state is left as soon as the outcome of its step is known, so whatever the
 * facts or "my bike" already say is skipped, and a machine started with all facts stands at once where they lead.
 */
function machineOf(id: string, first: string, states: Readonly<Record<string, FlowState>>) {
  const steps = stepsOf(states);
  const findingsOf = findingsOver(steps);
  const known = ({ rig, facts, checked }: FlowContext): FlowContext => ({
    facts,
    rig: learnedRig(rig, [...steps.values()], facts),
    ...(checked && { checked }),
  });
  const holds = (branch: Branch, context: FlowContext) => !('when' in branch) || branch.when.holds(findingsOf(context));
  const learn = assign<FlowContext, FlowEvent, undefined, FlowEvent, never>(({ context, event }) =>
    known({ ...context, facts: { ...context.facts, [event.step]: event.answer } }),
  );

  const build = (state: FlowState) => {
    if ('verdict' in state) {
      const { verdict } = state;
      const output = ({ context }: InContext) => ({ verdict: verdict.id, remedy: verdict.remedy(findingsOf(context)) });
      return { type: 'final' as const, meta: { verdict }, output };
    }
    if ('waits' in state) return {};
    if ('decide' in state) {
      return {
        always: state.decide.map((branch) => ({
          guard: ({ context }: InContext) => holds(branch, context),
          target: branch.to,
        })),
      };
    }
    if ('again' in state) {
      const { again, otherwise } = state;
      return {
        meta: { again },
        always: branchesOf(otherwise).map((branch) => ({
          guard: ({ context }: InContext) => again(findingsOf(context)) === undefined && holds(branch, context),
          target: branch.to,
        })),
      };
    }
    const { ask: step, routes } = state;
    return {
      meta: { step },
      always: Object.entries(routes).flatMap(([outcome, route]) =>
        branchesOf(route).map((branch) => ({
          guard: ({ context }: InContext) => outcomeOf(step, context) === outcome && holds(branch, context),
          target: branch.to,
        })),
      ),
      on: { answer: { guard: ({ event }: { readonly event: FlowEvent }) => event.step === step.id, actions: learn } },
    };
  };

  return createMachine({
    types: TYPES,
    id,
    initial: first,
    context: ({ input }) => known(input),
    states: Object.fromEntries(Object.entries(states).map(([name, state]) => [name, build(state)])),
    output: ({ event }) => finalOutput(event),
  });
}

export type FlowMachine = ReturnType<typeof machineOf>;

/** A flow: its machine, and the rows it was written with, in the order the user meets them. */
export interface Flow {
  readonly kind: 'rows';
  readonly id: string;
  readonly title: string;
  readonly first: string;
  readonly states: Readonly<Record<string, FlowState>>;
  readonly steps: ReadonlyMap<string, Step>;
  readonly machine: FlowMachine;
}

/** Defines a flow. The first row is where it starts. */
export function rowsFlow(id: string, title: string, states: Readonly<Record<string, FlowState>>): Flow {
  const first = Object.keys(states)[0];
  if (first === undefined) throw new RangeError(`flow ${id} must have at least one state`);
  return { kind: 'rows', id, title, first, states, steps: stepsOf(states), machine: machineOf(id, first, states) };
}

/** How a flow of rows opens. A page asks it before the rest has arrived. */
export interface RowsOpening {
  readonly id: string;
  readonly title: string;
  readonly states: Readonly<Record<string, FlowState>>;
}

/** Where a flow stands that has only its opening, when it is through with it. */
export const WAITING = 'waiting';

/** The flow as far as its opening goes: wherever a route leaves it, it waits. */
export function openingRows({ id, title, states }: RowsOpening): Flow {
  const within = (to: string) => (Object.hasOwn(states, to) ? to : WAITING);
  const route = (to: Route): Route =>
    typeof to === 'string' ? within(to) : to.map((branch) => ({ ...branch, to: within(branch.to) }));
  const cut = (state: FlowState): FlowState =>
    'ask' in state
      ? {
          ...state,
          routes: Object.fromEntries(Object.entries(state.routes).map(([outcome, to]) => [outcome, route(to)])),
        }
      : state;
  const opening = Object.fromEntries(Object.entries(states).map(([name, state]) => [name, cut(state)]));
  return rowsFlow(id, title, { ...opening, [WAITING]: { waits: true } });
}
