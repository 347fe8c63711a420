import FACTS from '../../content/words/facts.json' with { type: 'json' };
import SAME from '../../content/words/same.json' with { type: 'json' };
import { FLOW_LIST } from '../case/flows.ts';
import type { Document } from './document.ts';
import { type ArticleHead, allDocuments } from './documents.ts';
import type { FactRule, Rules } from './facts.ts';
import { type Heard, type Learnt, learn } from './learn.ts';
import { reader } from './reader.ts';
import { sameWords } from './same-words.ts';

/** What the file of the index holds. */
export interface IndexFile {
  readonly documents: readonly Document[];
  /** Words of one meaning, the first of each line for all of it. */
  readonly same: readonly string[];
  /** What was learnt from what people were heard to type. */
  readonly learnt: Learnt;
  /** What words give as answers. */
  readonly facts: readonly FactRule[];
  readonly lists: Rules['lists'];
  /** How the facts that words can give are called on a screen, by `step=option`. */
  readonly factNames: Readonly<Record<string, string>>;
}

/** A rule as it is written: it holds in every flow that asks for its step, or in those that it names. */
type Written = Partial<FactRule> & Pick<FactRule, 'fact'>;

/** The rules with the flows that ask for them, and the names of the answers. One that no flow asks for stops the build. */
async function facts(): Promise<Pick<IndexFile, 'facts' | 'lists' | 'factNames'>> {
  const flows = await Promise.all(FLOW_LIST.map(async ([id, flow]) => [id, (await flow.load()).steps] as const));
  const names: Record<string, string> = {};
  const rules = (FACTS.rules as readonly Written[]).map((rule) => {
    const [stepId = '', option = ''] = rule.fact.split('=');
    const asking = flows.filter(([id, steps]) => {
      if (rule.in && !rule.in.includes(id)) return false;
      const step = steps.get(stepId);
      const name =
        step && step.kind !== 'reading' ? (step.options as Readonly<Record<string, string>>)[option] : undefined;
      if (name !== undefined) names[rule.fact] = name;
      return name !== undefined;
    });
    if (asking.length < (rule.in?.length ?? 1))
      throw new Error(`content/words/facts.json: ${rule.in?.join(', ') ?? 'no flow'} has no answer ${rule.fact}`);
    return { ...rule, in: asking.map(([id]) => id) };
  });
  return { facts: rules, lists: FACTS.lists, factNames: names };
}

/** Everything that the search needs, made when the site is built. */
export async function indexFile(articles: readonly ArticleHead[], heard: readonly Heard[]): Promise<IndexFile> {
  const documents = await allDocuments(articles);
  const ruled = await facts();
  const learnt = learn(
    heard,
    documents,
    reader(documents, sameWords(SAME), { rules: ruled.facts, lists: ruled.lists }),
  );
  return { documents, same: SAME, learnt, ...ruled };
}
