import type { Answer, Step } from './step.ts';

/** Drops what was given under an answer that is gone, and what was given under that in turn. */
export function dropDependents(step: string, facts: Map<string, Answer>, steps: ReadonlyMap<string, Step>): void {
  const stale = [step];
  for (let gone = stale.pop(); gone !== undefined; gone = stale.pop())
    for (const id of facts.keys())
      if ((steps.get(id)?.givenUnder as readonly string[] | undefined)?.includes(gone)) {
        facts.delete(id);
        stale.push(id);
      }
}
