import type { Flow, FlowState, Route } from '../../machines/kit.ts';
import type { KnownOf } from '../steps/ids.ts';
import { type Findings, outcomeNamed } from '../steps/outcome.ts';
import type { Step, Tool } from '../steps/step.ts';
import type { Suspect } from '../verdicts/suspects.ts';
import type { Standing } from './replay.ts';

export interface Ahead {
  readonly steps: readonly Step[];
  readonly minutes: number;
  readonly tools: readonly Tool[];
}

/** The outcome that a suspect gives most, or the first of a step that says nothing about it. */
const foreseen = (step: Step, suspect: Suspect, findings: Findings): string =>
  outcomeNamed(findings, step.id) ?? suspect.signs[step.id]?.[0] ?? Object.keys(step.outcomes)[0] ?? 'cannot';

const firstThatHolds = (route: Route, findings: Findings): string | undefined =>
  typeof route === 'string' ? route : route.find((branch) => !('when' in branch) || branch.when.holds(findings))?.to;

/** The steps between where a case stands and the end, if this suspect were the cause: what a proof would take. */
export function ahead(flow: Flow, standing: Standing, suspect: Suspect): Ahead {
  const imagined = new Map<string, string>();
  const { findings: now } = standing;
  const findings: Findings = {
    ...now,
    outcome: (id) => now.outcome(id) ?? (imagined.get(id) as KnownOf<typeof id> | undefined),
  };
  const steps: Step[] = [];
  const seen = new Set<string>();
  let at: string | undefined = standing.state;
  while (at !== undefined && !seen.has(at)) {
    seen.add(at);
    const state: FlowState | undefined = flow.states[at];
    if (!state || 'verdict' in state) break;
    if ('decide' in state) {
      at = firstThatHolds(state.decide, findings);
      continue;
    }
    const known = outcomeNamed(findings, state.ask.id);
    const outcome = foreseen(state.ask, suspect, findings);
    if (known === undefined) {
      steps.push(state.ask);
      imagined.set(state.ask.id, outcome);
    }
    at = firstThatHolds(state.routes[outcome] ?? [], findings);
  }
  return {
    steps,
    minutes: steps.reduce((sum, step) => sum + step.minutes, 0),
    tools: [...new Set(steps.map((step) => step.tool))],
  };
}
