import GLOSSARY from '../../content/glossary.json' with { type: 'json' };
import COMPLAINTS from '../../content/words/complaints.json' with { type: 'json' };
import MORE from '../../content/words/more.json' with { type: 'json' };
import PLACES from '../../content/words/places.json' with { type: 'json' };
import { CALCULATORS } from '../calculators/all.ts';
import { FLOW_LIST } from '../case/flows.ts';
import { titleOf } from '../causes/cause.ts';
import { findingsOver } from '../steps/outcome.ts';
import { inWords } from '../steps/step.ts';
import type { Document } from './document.ts';

/** What is known of an article besides its text. */
export interface ArticleHead {
  readonly slug: string;
  readonly title: string;
  readonly summary: string;
}

/** Nothing is known of any bike. */
const NOTHING = findingsOver(new Map())({ rig: {}, facts: {} });

const moreWords = (id: string): string => (MORE as Readonly<Record<string, string>>)[id] ?? '';

/** What a word of the glossary is called in an address: letters and digits. */
export const slugOf = (word: string): string =>
  word
    .toLowerCase()
    .match(/[a-z0-9Ω]+/g)
    ?.join('-') ?? word;

const pathOfFlow = (id: string | undefined): string | undefined => FLOW_LIST.find(([flow]) => flow === id)?.[1].path;

const complaints = (): readonly Document[] =>
  (
    COMPLAINTS as readonly {
      id: string;
      flow?: string;
      title: string;
      words: string;
      article?: string;
      measure?: string;
    }[]
  ).map(({ id, flow, title, words, article, measure }) => ({
    id: `complaint/${id}`,
    title,
    words,
    path: pathOfFlow(flow) ?? `read/${article}/`,
    ...(flow !== undefined && { flow }),
    ...(measure !== undefined && { measure }),
  }));

const calculators = (): readonly Document[] =>
  CALCULATORS.map(({ id, title, asks }) => ({
    id: `calculate/${id}`,
    title,
    words: moreWords(`calculate/${id}`),
    text: asks,
    path: `calculate/${id}/`,
  }));

const words = (): readonly Document[] =>
  GLOSSARY.map(({ word, also, text }) => ({
    id: `word/${slugOf(word)}`,
    title: word,
    words: also,
    text,
    path: `words/#${slugOf(word)}`,
  }));

const places = (): readonly Document[] => PLACES;

/** The causes of the flows by their names. Each leads to the flow that looks for it. */
async function causes(): Promise<readonly Document[]> {
  const found = new Map<string, Document>();
  for (const [, flow] of FLOW_LIST) {
    if (flow.kind !== 'fault') continue;
    for (const [id, cause] of Object.entries((await flow.late()).causes))
      found.set(id, found.get(id) ?? { id: `cause/${id}`, title: titleOf(cause, NOTHING), words: '', path: flow.path });
  }
  return [...found.values()];
}

/** The checks of the flows by their questions. Each leads to the flow that asks it. */
async function steps(): Promise<readonly Document[]> {
  const found = new Map<string, Document>();
  for (const [, flow] of FLOW_LIST) {
    if (flow.kind !== 'fault') continue;
    for (const { id, ask, tool } of (await flow.load()).asked)
      if (tool === 'meter')
        found.set(id, found.get(id) ?? { id: `step/${id}`, title: inWords(ask, NOTHING), words: '', path: flow.path });
  }
  return [...found.values()];
}

/** Everything that can be found. */
export async function allDocuments(articles: readonly ArticleHead[]): Promise<readonly Document[]> {
  const read = articles.map(({ slug, title, summary }) => ({
    id: `read/${slug}`,
    title,
    words: moreWords(`read/${slug}`),
    text: summary,
    path: `read/${slug}/`,
  }));
  return [...complaints(), ...calculators(), ...read, ...words(), ...places(), ...(await causes()), ...(await steps())];
}
