import { initialTransition, transition } from 'xstate';
import { type Flow, type FlowContext, type FlowMeta, WAITING } from '../../machines/rows.ts';
import { findingsOver, outcomeOf } from '../steps/outcome.ts';
import type { Case } from './events.ts';
import { fold } from './fold.ts';
import type { Standing, Terminal } from './standing.ts';

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

/** Replays a case of a flow of explicit rows: the rows decide the order, and what they did not ask for is left aside. */
export function replayRows(flow: Flow, { events }: Case): Standing {
  const folded = fold(events, flow.steps, undefined);
  const { snapshot, terminals, meta, unusable } = walk(flow, folded);
  const { rig, facts } = snapshot.context;
  const common = {
    state: String(snapshot.value),
    rig,
    facts,
    carried: Object.fromEntries(
      Object.entries(folded.facts).filter(([id]) => folded.brought.has(id) && !Object.hasOwn(facts, id)),
    ),
    findings: findingsOver(flow.steps)({ rig, facts }),
    terminals,
    decided: undefined,
    unusable,
    checked: folded.checked,
    repairs: [],
    cured: folded.cured,
    notes: folded.notes,
  };
  if (meta?.step) return { ...common, open: { kind: 'step', step: meta.step } };
  if (meta?.verdict && snapshot.output)
    return { ...common, open: { kind: 'verdict', verdict: meta.verdict, remedy: snapshot.output.remedy } };
  if (snapshot.value === WAITING) return { ...common, open: { kind: 'waiting' } };
  throw new Error(`flow ${flow.id} stands in a state that neither asks nor concludes`);
}
