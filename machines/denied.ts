import { deniedBy } from '../src/steps/given-under.ts';
import { type Findings, outcomeNamed } from '../src/steps/outcome.ts';
import type { Step } from '../src/steps/step.ts';
import type { FlowContext, StagedFlow } from './machine.ts';

/** An answer that a part is not there, and the one that said it was. */
export interface Denied {
  readonly said: Step;
  readonly by: Step;
}

/**
 * What was said to be fitted, and is not there where it was looked for: that is asked once more before anything is made of
 * it. Whoever says it again keeps it, and the look tells nothing.
 */
export function deniedIn(
  flow: StagedFlow,
  { facts, confirmed = [], left = [] }: FlowContext,
  f: Findings,
): Denied | undefined {
  const isOpen = (id: string) => facts[id] !== undefined && !confirmed.includes(id) && !left.includes(id);
  return flow.asked
    .filter((by) => by.sensible?.(f) !== false)
    .flatMap((by) => {
      const denies = deniedBy(by, outcomeNamed(f, by.id)).filter(isOpen);
      return denies.map((id) => ({ said: flow.steps.get(id), by }));
    })
    .find((one): one is Denied => one.said !== undefined);
}
