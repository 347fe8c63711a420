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

/** What an answer says is not there, as questions of the build that may have been told that it is. */
export const deniedBy = (step: Step | undefined, outcome: string | undefined): readonly string[] =>
  step?.kind === 'choice' && outcome !== undefined
    ? ((step.denies as Readonly<Record<string, readonly string[]>> | undefined)?.[outcome] ?? [])
    : [];

/** Drops what said that a part is not there, which is there after all: it is looked for once more. */
export function dropDeniers(step: string, facts: Map<string, Answer>, steps: ReadonlyMap<string, Step>): void {
  for (const [id, answer] of [...facts])
    if ('option' in answer && deniedBy(steps.get(id), answer.option).includes(step)) facts.delete(id);
}
