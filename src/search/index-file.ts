import { FLOW_LIST } from '../case/flows.ts';
import type { Document } from './document.ts';
import { RULES } from './facts.ts';

/** What the file of the index holds. */
export interface IndexFile {
  readonly documents: readonly Document[];
  /** How the facts that words can give are called on a screen, by `step=option`. */
  readonly factNames: Readonly<Record<string, string>>;
}

/** The names of the facts as their steps have them. A rule that names a step or an option which is not there stops the build. */
export async function factNames(): Promise<Readonly<Record<string, string>>> {
  const names: Record<string, string> = {};
  for (const rule of RULES)
    for (const id of rule.in) {
      const flow = FLOW_LIST.find(([one]) => one === id)?.[1];
      const [stepId = '', option = ''] = rule.fact.split('=');
      const step = (await flow?.load())?.steps.get(stepId);
      const name =
        step && step.kind !== 'reading' ? (step.options as Readonly<Record<string, string>>)[option] : undefined;
      if (name === undefined) throw new Error(`content/words/facts.json: ${id} has no answer ${rule.fact}`);
      names[rule.fact] = name;
    }
  return names;
}
