import { initialTransition, transition } from 'xstate';
import type { Flow, FlowContext, FlowMeta } from '../../machines/rows.ts';
import type { Rig } from '../rig/rig.ts';
import { findingsOver, outcomeOf } from '../steps/outcome.ts';
import { EVERY_PART, type Facts, type Step } from '../steps/step.ts';
import type { Verdict } from '../verdicts/verdict.ts';
import type { Case, CaseEvent } from './events.ts';
import type { Standing, Terminal } from './standing.ts';

/**
 * The case after a change of an answer: the facts that were given under it are gone, and theirs in turn. An answer that
 * was brought may have had answers of another flow given under it, so those go with it.
 */
export function withoutWhatDependedOn(
  step: string,
  facts: Facts,
  steps: ReadonlyMap<string, Step>,
  brought: ReadonlySet<string> = new Set(),
): Facts {
  const foreign = brought.has(step) ? Object.keys(facts).filter((id) => !steps.has(id)) : [];
  const stale = new Set([step, ...foreign]);
  for (let grew = true; grew; ) {
    grew = false;
    for (const id of Object.keys(facts)) {
      const under = steps.get(id)?.givenUnder ?? [];
      if (!stale.has(id) && under.some((other) => stale.has(other))) {
        stale.add(id);
        grew = true;
      }
    }
  }
  return Object.fromEntries(Object.entries(facts).filter(([id]) => !stale.has(id)));
}

/** The facts that a repair cannot have altered: those whose steps observe none of the parts it mends. */
export function factsAfterRepair(verdict: Verdict, facts: Facts, steps: ReadonlyMap<string, Step>): Facts {
  const survives = (id: string) => {
    // What a step of another flow observes is not known here, so any repair may have altered it.
    const observed = steps.get(id)?.observes ?? EVERY_PART;
    return !observed.some((part) => verdict.mends.includes(part));
  };
  return Object.fromEntries(Object.entries(facts).filter(([id]) => survives(id)));
}

interface Known {
  readonly rig: Rig;
  readonly facts: Facts;
  /** The steps whose answers came with the hand-over. */
  readonly brought: ReadonlySet<string>;
  readonly checked: ReadonlySet<string>;
  readonly repairs: readonly string[];
  readonly cured: string | undefined;
  readonly notes: readonly string[];
}

const verdictsOf = (flow: Flow): ReadonlyMap<string, Verdict> =>
  new Map(
    Object.values(flow.states).flatMap((state) =>
      'verdict' in state ? [[state.verdict.id, state.verdict] as const] : [],
    ),
  );

/** What was checked stays so until the answer is gone. */
const checkedStill = ({ checked, facts }: Known, kept: Facts): ReadonlySet<string> =>
  new Set([...checked].filter((id) => !Object.hasOwn(facts, id) || Object.hasOwn(kept, id)));

function after(known: Known, event: CaseEvent, flow: Flow): Known {
  switch (event.type) {
    case 'rig':
      return { ...known, rig: event.rig };
    case 'answer':
      return { ...known, facts: { ...known.facts, [event.step]: event.answer }, cured: undefined };
    case 'revise': {
      const kept = withoutWhatDependedOn(event.step, known.facts, flow.steps, known.brought);
      return {
        ...known,
        facts: { ...kept, [event.step]: event.answer },
        checked: new Set([...checkedStill(known, kept), event.step]),
        cured: undefined,
      };
    }
    case 'confirm':
      return { ...known, checked: new Set([...known.checked, event.step]) };
    case 'repair': {
      const verdict = verdictsOf(flow).get(event.verdict);
      if (!verdict) return known;
      const kept = factsAfterRepair(verdict, known.facts, flow.steps);
      return {
        ...known,
        rig: verdict.afterwards?.(known.rig) ?? known.rig,
        facts: kept,
        checked: checkedStill(known, kept),
        repairs: [...known.repairs, event.verdict],
        cured: undefined,
      };
    }
    case 'cured':
      return { ...known, cured: event.verdict };
    case 'note':
      return { ...known, notes: [...known.notes, event.text] };
    case 'handOver':
      return { ...known, brought: new Set(Object.keys(known.facts)) };
  }
}

/** No route of a flow is longer than this; a longer one would be a loop, which the tests of the flows exclude. */
const LONGEST_ROUTE = 100;

/** Walks a flow with what is known, one answer after the other, to the first question that is open or to a verdict. */
export function walk(flow: Flow, context: FlowContext) {
  const terminals: Terminal[] = [];
  let [snapshot] = initialTransition(flow.machine, { rig: context.rig, facts: {} });
  for (let i = 0; i < LONGEST_ROUTE; i++) {
    const meta = Object.values(snapshot.getMeta())[0] as FlowMeta | undefined;
    const step = meta?.step;
    const answer = step && context.facts[step.id];
    if (!step || !answer) return { snapshot, terminals, meta, unusable: undefined };
    const outcome = outcomeOf(step, {
      rig: snapshot.context.rig,
      facts: { ...snapshot.context.facts, [step.id]: answer },
    });
    if (outcome === undefined) return { snapshot, terminals, meta, unusable: answer };
    terminals.push({ step, answer, outcome });
    [snapshot] = transition(flow.machine, snapshot, { type: 'answer', step: step.id, answer });
  }
  throw new Error(`flow ${flow.id} goes round in a circle`);
}

/** Replays the events of a case: where it stands, and what led there. Pure: the same case gives the same standing. */
export function replayRows(flow: Flow, { events }: Case): Standing {
  const start: Known = {
    rig: {},
    facts: {},
    brought: new Set(),
    checked: new Set(),
    repairs: [],
    cured: undefined,
    notes: [],
  };
  const known = events.reduce((so, event) => after(so, event, flow), start);
  const { snapshot, terminals, meta, unusable } = walk(flow, known);
  const { rig, facts } = snapshot.context;
  const common = {
    state: String(snapshot.value),
    rig,
    facts,
    carried: Object.fromEntries(
      Object.entries(known.facts).filter(([id]) => known.brought.has(id) && !Object.hasOwn(facts, id)),
    ),
    findings: findingsOver(flow.steps)({ rig, facts }),
    terminals,
    decided: undefined,
    unusable,
    checked: known.checked,
    repairs: known.repairs,
    cured: known.cured,
    notes: known.notes,
  };
  if (meta?.step) return { ...common, open: { kind: 'step', step: meta.step } };
  if (meta?.verdict && snapshot.output)
    return { ...common, open: { kind: 'verdict', verdict: meta.verdict, remedy: snapshot.output.remedy } };
  throw new Error(`flow ${flow.id} stands in a state that neither asks nor concludes`);
}
