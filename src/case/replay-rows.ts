import { initialTransition, transition } from 'xstate';
import { type Flow, type FlowContext, type FlowMeta, WAITING } from '../../machines/rows.ts';
import type { Rig } from '../rig/rig.ts';
import { findingsOver, outcomeOf } from '../steps/outcome.ts';
import type { Facts, Step } from '../steps/step.ts';
import type { Case } from './events.ts';
import { fold } from './fold.ts';
import type { Standing, Terminal } from './standing.ts';

/** No route of a flow is longer than this; a longer one would be a loop, which the tests of the flows exclude. */
const LONGEST_ROUTE = 100;

/** Plans on which a reading from before may be void: a question says whether it is. */
const MAY_BE_VOID = ['after-reflash', 'unit-swapped'];

/** What was read of the stored profile and saved with the bike, where nothing has happened to it since. */
function savedReadings(rig: Rig, facts: Facts): Facts {
  const [plan, after] = [facts['planned-change'], facts['read-after']];
  const mayBeVoid = plan && 'option' in plan && MAY_BE_VOID.includes(plan.option);
  const holds = !mayBeVoid || (after && 'option' in after && after.option === 'yes');
  return holds ? (rig.profileRead?.answers ?? {}) : {};
}

/** What was told of the head unit. Where another flow has brought it, it stands beside what was read there. */
const TOLD_OF_UNIT = [
  'profile-source',
  'paper-rear',
  'paper-lowered',
  'paper-boosted',
  'paper-same-eq',
  'delivered-with',
  'delivered-amp',
];

/** What was measured counts from the first question on, whenever and in whichever flow it was: nobody reads it twice. */
function readEarly(flow: Flow, { rig, facts }: FlowContext, brought: ReadonlySet<string>): Facts {
  const read = (step: Step) =>
    step.kind === 'reading' || step.tool === 'meter' || (brought.has(step.id) && TOLD_OF_UNIT.includes(step.id));
  const early = Object.fromEntries(
    [...flow.steps.values()].flatMap((step) => {
      const answer = read(step) && facts[step.id];
      return answer ? [[step.id, answer] as const] : [];
    }),
  );
  return Object.fromEntries(
    Object.entries(early).filter(([id]) => {
      const step = flow.steps.get(id);
      return step && outcomeOf(step, { rig, facts: early }) !== undefined;
    }),
  );
}

/** Walks a flow with what is known, one answer after the other, to the first question that is open or to a verdict. */
export function walk(flow: Flow, context: FlowContext, brought: ReadonlySet<string> = new Set()) {
  const early = readEarly(flow, context, brought);
  const { rig, checked } = context;
  let [snapshot] = initialTransition(flow.machine, { rig, facts: early, ...(checked && { checked }) });
  const known = () => {
    const order = Object.keys(context.facts);
    return Object.entries(snapshot.context.facts)
      .flatMap(([id, answer]): readonly Terminal[] => {
        const step = flow.steps.get(id);
        const outcome = step && outcomeOf(step, snapshot.context);
        return step && outcome !== undefined ? [{ step, answer, outcome }] : [];
      })
      .toSorted((a, b) => order.indexOf(a.step.id) - order.indexOf(b.step.id));
  };
  for (let i = 0; i < LONGEST_ROUTE; i++) {
    const meta = Object.values(snapshot.getMeta())[0] as FlowMeta | undefined;
    const step = meta?.step;
    const answer = step && context.facts[step.id];
    if (!step || !answer) return { snapshot, terminals: known(), meta, unusable: undefined };
    const outcome = outcomeOf(step, {
      rig: snapshot.context.rig,
      facts: { ...snapshot.context.facts, [step.id]: answer },
    });
    if (outcome === undefined) return { snapshot, terminals: known(), meta, unusable: answer };
    [snapshot] = transition(flow.machine, snapshot, { type: 'answer', step: step.id, answer });
  }
  throw new Error(`flow ${flow.id} goes round in a circle`);
}

/** Replays a case of a flow of explicit rows: the rows decide the order, and what they did not ask for is left aside. */
export function replayRows(flow: Flow, { events }: Case): Standing {
  const folded = fold(events, flow.steps, undefined);
  const checked = new Set([...folded.checked, ...folded.left]);
  const given: Facts = { ...savedReadings(folded.rig, folded.facts), ...folded.facts };
  const { snapshot, terminals, meta, unusable } = walk(
    flow,
    { rig: folded.rig, facts: given, checked },
    folded.brought,
  );
  const { rig, facts } = snapshot.context;
  const findings = findingsOver(flow.steps)({ rig, facts, checked });
  const common = {
    state: String(snapshot.value),
    rig,
    facts,
    odd: [],
    cameBy: [],
    carried: Object.fromEntries(
      Object.entries(folded.facts).filter(([id]) => folded.brought.has(id) && !Object.hasOwn(facts, id)),
    ),
    findings,
    terminals,
    decided: undefined,
    unusable,
    checked: folded.checked,
    repairs: [],
    cured: folded.cured,
    notes: folded.notes,
  };
  if (meta?.step) return { ...common, open: { kind: 'step', step: meta.step } };
  const again = meta?.again?.(findings);
  if (again) return { ...common, open: { kind: 'doubt', step: again, because: 'misfit' } };
  if (meta?.verdict && snapshot.output)
    return { ...common, open: { kind: 'verdict', verdict: meta.verdict, remedy: snapshot.output.remedy } };
  if (snapshot.value === WAITING) return { ...common, open: { kind: 'waiting' } };
  throw new Error(`flow ${flow.id} stands in a state that neither asks nor concludes`);
}
