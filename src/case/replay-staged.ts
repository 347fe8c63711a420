import { initialTransition } from 'xstate';
import type { Decided } from '../../machines/decision.ts';
import {
  decisionOf,
  type FlowContext,
  type FlowOutput,
  findingsIn,
  type Late,
  type StagedFlow,
} from '../../machines/machine.ts';
import { outcomeNamed } from '../steps/outcome.ts';
import type { Case } from './events.ts';
import { type Folded, fold } from './fold.ts';
import type { Open, Standing, Terminal } from './standing.ts';

const contextOf = (
  { rig, facts, checked, left, askedAgain, repairs, odd, cameBy, learnt }: Folded,
  late: Late | undefined,
): FlowContext => ({
  rig,
  facts,
  confirmed: [...checked],
  left: [...left],
  askedAgain,
  repairs,
  late,
  mayHandOver: learnt,
  odd,
  cameBy,
});

/** What a final state or a question is to whoever looks at it. */
function openOf({ decision }: Decided, output: FlowOutput | undefined): Open {
  if (output && 'onward' in output) return { kind: 'onward', to: output.onward };
  if (output && 'list' in output) return { kind: 'list', causes: output.list };
  if (output && decision.kind === 'conclude')
    return {
      kind: 'cause',
      cause: output.cause,
      certainty: decision.certainty,
      besides: decision.besides,
      remedy: output.remedy,
    };
  if (decision.kind === 'ask') return { kind: 'step', step: decision.step };
  if (decision.kind === 'confirm') return { kind: 'doubt', step: decision.step, because: decision.because };
  return { kind: 'waiting' };
}

/** Replays a case of a flow by stages: all its events come to facts, and what follows from them is decided once. */
export function replayStaged(flow: StagedFlow, { events }: Case, late?: Late): Standing {
  const folded = fold(events, flow.steps, late);
  const [snapshot] = initialTransition(flow.machine, contextOf(folded, late));
  const { context } = snapshot;
  const findings = findingsIn(flow, context);
  const decided = decisionOf(flow, context);
  const open = openOf(decided, snapshot.output);
  const answered = Object.entries(folded.facts);
  return {
    state: typeof snapshot.value === 'string' ? snapshot.value : Object.entries(snapshot.value).flat().join('.'),
    rig: context.rig,
    facts: folded.facts,
    findings,
    carried: Object.fromEntries(answered.filter(([id]) => folded.brought.has(id) && !flow.steps.has(id))),
    terminals: answered.flatMap(([id, answer]): Terminal[] => {
      const step = flow.steps.get(id);
      const outcome = step && outcomeNamed(findings, id);
      return step && outcome !== undefined ? [{ step, answer, outcome }] : [];
    }),
    open,
    decided,
    unusable: open.kind === 'step' ? folded.facts[open.step.id] : undefined,
    odd: folded.odd,
    cameBy: folded.cameBy,
    checked: folded.checked,
    repairs: folded.repairs.flatMap(({ cause, result }) => (result === 'not-it' ? [] : [cause])),
    cured: folded.cured,
    notes: folded.notes,
  };
}
