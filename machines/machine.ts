import { assign, createMachine } from 'xstate';
import type { Cause, Remedy } from '../src/causes/cause.ts';
import type { Repaired } from '../src/inference/posterior.ts';
import type { Table } from '../src/inference/table.ts';
import type { Rig } from '../src/rig/rig.ts';
import { dropDeniers, dropDependents } from '../src/steps/given-under.ts';
import { type Findings, findingsOver, learnedRig } from '../src/steps/outcome.ts';
import type { Answer, Facts, Step } from '../src/steps/step.ts';
import type { Decided } from './decision.ts';
import { elsewhere } from './elsewhere.ts';
import { canBeAsked } from './sense.ts';

/** What a page fetches late: what the causes of the complaint show, and what their fixes are. */
export interface Late {
  readonly table: Table;
  readonly causes: Readonly<Record<string, Cause>>;
}

/** What a flow knows: the bike, the answers, and what became of them. Nothing derived is kept. */
export interface FlowContext {
  readonly rig: Rig;
  readonly facts: Facts;
  /** Steps whose answer was given a second time and stayed. */
  readonly confirmed?: readonly string[];
  /** Doubted answers that could not be given a second time. */
  readonly left?: readonly string[];
  /** How many answers were asked for again since the last repair. */
  readonly askedAgain?: number;
  readonly repairs?: readonly Repaired[];
  readonly late?: Late | undefined;
  /** Whether anything was learnt since the case came here: else it is not passed on, or it would go to and fro for ever. */
  readonly mayHandOver?: boolean;
  /** Answers of another flow that are none of this one’s questions, and that nothing it looks for explains. */
  readonly odd?: readonly string[];
  /** The flows that the case came through, the first of them first. */
  readonly cameBy?: readonly string[];
}

export type FlowEvent =
  | { readonly type: 'answer'; readonly step: string; readonly answer: Answer }
  | { readonly type: 'confirm'; readonly step: string }
  /** A doubted answer cannot be given a second time. */
  | { readonly type: 'leave'; readonly step: string };

/** Another flow that takes a case on: which causes it looks for, what they are called together, and why it is better at it. */
export interface HandsOver {
  readonly flow: string;
  readonly title: string;
  readonly because: string | ((findings: Findings) => string);
  readonly causes: readonly string[];
  /** Whether it may be no fault at all, from what is known: then it is said where that begins. */
  readonly mayBeNoFault?: (findings: Findings) => boolean;
  /** On which bikes there is anything to look for there: on all, where nothing is said. */
  readonly sensible?: (findings: Findings) => boolean;
  /** It came from there, and nothing that is looked for here fits. */
  readonly goesBack?: true;
  /** What that flow need not ask any more. */
  readonly told?: Facts | ((findings: Findings) => Facts);
  /** The complaint itself is the other one, whatever its cause; and the answers that say so, which are given once more. */
  readonly isIt?: {
    readonly when: (findings: Findings) => boolean;
    readonly by: readonly Step[];
    /** Whoever was sent here by a flow that can take it back is that one's: what this one is called by is none of it. */
    readonly orBack?: true;
  };
}

/** What the other flow need not ask, in a case as it stands. */
export const toldBy = ({ told }: HandsOver, findings: Findings): Facts | undefined =>
  typeof told === 'function' ? told(findings) : told;

/** Why the other flow is better at a case as it stands. */
export const becauseOf = ({ because }: Pick<HandsOver, 'because'>, findings: Findings): string =>
  typeof because === 'function' ? because(findings) : because;

/** Steps that have to be answered before one may be asked, for safety. */
export interface Before {
  readonly step: string;
  readonly first: readonly string[];
}
/** A flow as it is written: what may be asked, in stages, what is safe before what, and what may be concluded. */
export interface FlowSpec {
  readonly title: string;
  readonly stages: {
    /** What is fitted, in this order. */
    readonly fitted: readonly Step[];
    /** What is told of the past, in this order. */
    readonly told: readonly Step[];
    /** What eyes, ears and hands tell, and then readings: in the order that the inference finds best. */
    readonly look: readonly Step[];
    readonly measure: readonly Step[];
  };
  readonly safe: readonly Before[];
  /** The ids of the causes that it may end in. */
  readonly causes: readonly string[];
  readonly handsOver: readonly HandsOver[];
}

export interface StagedFlow {
  readonly kind: 'staged';
  readonly id: string;
  readonly title: string;
  readonly spec: FlowSpec;
  /** Every step, by id. */
  readonly steps: ReadonlyMap<string, Step>;
  /** Asked first, in this order. */
  readonly inOrder: readonly Step[];
  readonly told: ReadonlySet<string>;
  /** Asked in the order of the inference. */
  readonly asked: readonly Step[];
  readonly causes: readonly string[];
  readonly handsOver: readonly HandsOver[];
  /** Whatever it can think of: its causes, and one for all that each other flow looks for. */
  readonly ends: readonly string[];
  before(step: string): readonly string[];
  readonly decide: Decide | undefined;
  readonly machine: FlowMachine;
}

/** A flow without causes of its own concludes nothing: it sends on, and the next one doubts what it has to. */
export const sendsOn = (flow: StagedFlow): boolean => flow.causes.length === 0;

/** What a final state gives: the cause and its fix, a list of those who are left, or the flow that goes on. */
export type FlowOutput =
  | { readonly cause: string; readonly remedy: Remedy }
  | { readonly list: readonly string[] }
  | { readonly onward: HandsOver };

export interface FlowMeta {
  readonly step?: Step;
}

/** What the machines are typed by. They are made without the kit that XState has for it: half of that no flow has a use for. */
const TYPES = {} as {
  context: FlowContext;
  events: FlowEvent;
  input: FlowContext;
  output: FlowOutput;
  meta: FlowMeta;
};

type InContext = { readonly context: FlowContext };

const decisions = new WeakMap<FlowContext, Decided>();
/** The decision on a context: taken once, however many guards ask for it. */
export function decisionOf(flow: StagedFlow, context: FlowContext): Decided {
  const known = decisions.get(context) ?? decided(flow, context);
  decisions.set(context, known);
  return known;
}

/** What is fitted and told is asked in its order; then the inference decides. */
function decided(flow: StagedFlow, context: FlowContext): Decided {
  const findings = findingsIn(flow, context);
  const step = flow.inOrder.find((one) => canBeAsked(one, findings));
  if (step) return { decision: { kind: 'ask', step } };
  return context.late && flow.decide ? flow.decide(flow, context, findings) : { decision: { kind: 'wait' } };
}

/** What is known of a case, in the form that steps and causes ask it. */
export const findingsIn = (flow: StagedFlow, { rig, facts }: Pick<FlowContext, 'rig' | 'facts'>): Findings =>
  findingsOver(flow.steps)({ rig, facts });

/**
 * The XState machine of a flow. Its stages are states with their steps inside; `deciding` is left for whatever the
 * inference finds best among the steps that make sense and are safe, for an answer that is doubted, or for a final state:
 * a cause, a list, or the flow that goes on. A machine that is started with facts stands at once where they lead.
 */
function machineOf(flow: Omit<StagedFlow, 'machine'>) {
  const whole = flow as StagedFlow;
  const ofTheRig = [...flow.steps.values()].filter(({ kind }) => kind === 'rig');
  const { stages } = flow.spec;
  const decisionIn = ({ context }: InContext) => decisionOf(whole, context).decision;
  const learn = assign<FlowContext, FlowEvent, undefined, FlowEvent, never>(({ context, event }) => {
    if (event.type === 'confirm') {
      const facts = new Map(Object.entries(context.facts));
      dropDeniers(event.step, facts, flow.steps);
      return {
        ...context,
        facts: Object.fromEntries(facts),
        confirmed: [...(context.confirmed ?? []), event.step],
        askedAgain: (context.askedAgain ?? 0) + 1,
      };
    }
    if (event.type === 'leave')
      return {
        ...context,
        left: [...(context.left ?? []), event.step],
        askedAgain: (context.askedAgain ?? 0) + 1,
      };
    const given = new Map(Object.entries(context.facts));
    const changed = given.has(event.step);
    if (changed) dropDependents(event.step, given, flow.steps);
    const facts = Object.fromEntries(given.set(event.step, event.answer));
    return {
      ...context,
      facts,
      rig: learnedRig(context.rig, ofTheRig, facts),
      // An answer that is changed was looked at twice as well.
      ...(changed && {
        confirmed: [...(context.confirmed ?? []), event.step],
        askedAgain: (context.askedAgain ?? 0) + 1,
      }),
    };
  });
  const onAnswer = { answer: { target: '#deciding', actions: learn } } as const;

  // A stage is entered at one of its steps; the first is named because a state with states must name one.
  const stageOf = (steps: readonly Step[]) => ({
    ...(steps[0] && { initial: steps[0].id }),
    states: Object.fromEntries(steps.map((step) => [step.id, { meta: { step }, on: onAnswer }])),
  });
  const toSteps = Object.entries(stages).flatMap(([stage, steps]) =>
    steps.map((step) => ({
      target: `${stage}.${step.id}`,
      guard: (it: InContext) => {
        const decision = decisionIn(it);
        return decision.kind === 'ask' && decision.step.id === step.id;
      },
    })),
  );
  const toOthers = flow.handsOver.map((to) => ({
    target: `onward to ${to.flow}`,
    guard: (it: InContext) => {
      const decision = decisionIn(it);
      return decision.kind === 'hand over' && decision.to.flow === to.flow;
    },
  }));
  const toCauses = flow.causes.map((cause) => ({
    target: cause,
    guard: (it: InContext) => {
      const decision = decisionIn(it);
      return decision.kind === 'conclude' && decision.cause === cause;
    },
  }));
  const onward = flow.handsOver.map((to) => [
    `onward to ${to.flow}`,
    {
      type: 'final' as const,
      output: ({ context }: InContext) => {
        const decision = decisionIn({ context });
        return { onward: decision.kind === 'hand over' ? decision.to : to };
      },
    },
  ]);
  const concluded = flow.causes.map((cause) => [
    cause,
    {
      type: 'final' as const,
      output: ({ context }: InContext) => ({
        cause,
        remedy: context.late?.causes[cause]?.remedy(findingsIn(whole, context)),
      }),
    },
  ]);

  return createMachine({
    types: TYPES,
    id: flow.id,
    initial: 'deciding',
    context: ({ input }) => ({ ...input, rig: learnedRig(input.rig, ofTheRig, input.facts) }),
    states: {
      deciding: {
        id: 'deciding',
        always: [
          ...toSteps,
          { target: 'doubt', guard: (it: InContext) => decisionIn(it).kind === 'confirm' },
          { target: 'waiting', guard: (it: InContext) => decisionIn(it).kind === 'wait' },
          ...toOthers,
          ...toCauses,
          { target: 'short list' },
        ],
      },
      fitted: stageOf(stages.fitted),
      told: stageOf(stages.told),
      look: stageOf(stages.look),
      measure: stageOf(stages.measure),
      /** An answer is given once more: it stays, or it is another one. Or it cannot be given again. */
      doubt: {
        on: {
          ...onAnswer,
          confirm: { target: '#deciding', actions: learn },
          leave: { target: '#deciding', actions: learn },
        },
      },
      /** What the causes show and how they are mended has not arrived yet. */
      waiting: {},
      ...Object.fromEntries([...onward, ...concluded]),
      'short list': {
        type: 'final',
        output: ({ context }: InContext) => {
          const { decision } = decisionOf(whole, context);
          return { list: decision.kind === 'list' ? decision.causes : [] };
        },
      },
    },
    output: ({ event }) => (event as unknown as { output: FlowOutput }).output,
  });
}
export type FlowMachine = ReturnType<typeof machineOf>;

/** What decides when everything in order is answered: the inference, or nothing where it has not arrived yet. */
export type Decide = (flow: StagedFlow, context: FlowContext, findings: Findings) => Decided;

/** Makes a flow of what is written about it. */
export function staged(id: string, spec: FlowSpec, decide?: Decide): StagedFlow {
  const { fitted, told, look, measure } = spec.stages;
  const all = [...fitted, ...told, ...look, ...measure];
  const firstOf = new Map(spec.safe.map(({ step, first }) => [step, first]));
  const before = new Map(
    all.map(({ id, givenUnder = [] }) => [id, [...new Set([...(firstOf.get(id) ?? []), ...givenUnder])]]),
  );
  const made = {
    kind: 'staged' as const,
    id,
    title: spec.title,
    spec,
    steps: new Map(all.map((step) => [step.id, step])),
    inOrder: [...fitted, ...told],
    told: new Set(told.map((step) => step.id)),
    asked: [...look, ...measure],
    causes: spec.causes,
    handsOver: spec.handsOver,
    ends: [...spec.causes, ...spec.handsOver.map((to) => elsewhere(to.flow))],
    before: (step: string) => before.get(step) ?? [],
    decide,
  };
  return { ...made, machine: machineOf(made) };
}
