import FACTS from '../../content/words/facts.json' with { type: 'json' };
import SAME from '../../content/words/same.json' with { type: 'json' };
import { FLOW_LIST } from '../case/flows.ts';
import type { Document } from './document.ts';
import { type ArticleHead, allDocuments } from './documents.ts';
import { factRules, type Rules } from './facts.ts';
import { leanDocument } from './lean.ts';
import { leanChoices } from './lean-choices.ts';
import { type Heard, type Learnt, learn } from './learn.ts';
import { reader } from './reader.ts';
import { type SameWords, sameWords, withoutForms } from './same-words.ts';

/** The index: all that the search needs. */
export interface IndexFile {
  readonly documents: readonly Document[];
  /** Words of one meaning, the first of each line for all of it. */
  readonly same: readonly string[];
  /** What was learnt from what people were heard to type. */
  readonly learnt: Learnt;
  /** What words give as answers. */
  readonly facts: Rules;
  /** How the facts that words can give are called on a screen, by `step=option`. */
  readonly factNames: Readonly<Record<string, string>>;
}

/** The rules with the flows that ask for them, and the names of the answers. One that no flow asks for stops the build. */
async function facts({ oneFor }: SameWords): Promise<Pick<IndexFile, 'facts' | 'factNames'>> {
  const flows = await Promise.all(FLOW_LIST.map(async ([id, flow]) => [id, (await flow.load()).steps] as const));
  const names: Record<string, string> = {};
  const asked: Record<string, readonly string[]> = {};
  for (const { step: stepId, option, only } of factRules(FACTS.rules)) {
    const asking = flows.filter(([, steps]) => {
      const step = steps.get(stepId);
      const name =
        step && step.kind !== 'reading' ? (step.options as Readonly<Record<string, string>>)[option] : undefined;
      if (name !== undefined) names[`${stepId}=${option}`] = name;
      return name !== undefined;
    });
    asked[`${stepId}=${option}`] = asking.map(([id]) => id);
    const without = only?.filter((id) => !asking.some(([one]) => one === id)) ?? (asking.length > 0 ? [] : ['no flow']);
    if (without.length > 0)
      throw new Error(`content/words/facts.json: ${without.join(', ')} has no answer ${stepId}=${option}`);
  }
  const rules = FACTS.rules.map((rule) => {
    const at = rule.indexOf(': ') + 2;
    return (
      rule.slice(0, at) +
      rule
        .slice(at)
        .split(' & ')
        .map((clause) => leanChoices(clause, oneFor))
        .join(' & ')
    );
  });
  const lists = Object.fromEntries(
    Object.entries(FACTS.lists).map(([name, choices]) => [name, leanChoices(choices, oneFor)]),
  );
  return { facts: { rules, lists, asked }, factNames: names };
}

/** Everything that the search needs, made when the site is built. */
export async function indexFile(articles: readonly ArticleHead[], heard: readonly Heard[]): Promise<IndexFile> {
  const same = withoutForms(SAME);
  const one = sameWords(same);
  const documents = (await allDocuments(articles)).map((entry) => leanDocument(entry, one));
  const ruled = await facts(one);
  const learnt = learn(heard, documents, reader(documents, one, ruled.facts));
  return { documents, same, learnt, ...ruled };
}
