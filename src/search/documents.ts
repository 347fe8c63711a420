import COMPLAINTS from '../../content/words/complaints.json' with { type: 'json' };
import MORE from '../../content/words/more.json' with { type: 'json' };
import PLACES from '../../content/words/places.json' with { type: 'json' };
import { CALCULATORS } from '../calculators/all.ts';
import { FLOW_LIST } from '../case/flows.ts';
import { titleOf } from '../causes/cause.ts';
import { findingsOver } from '../steps/outcome.ts';
import { inWords, type Place } from '../steps/step.ts';
import type { Document } from './document.ts';
import { ENTRIES } from './glossary.ts';

/** What is known of an article besides its text. */
export interface ArticleHead {
  readonly slug: string;
  readonly title: string;
  readonly summary: string;
}

/** Nothing is known of any bike. */
const NOTHING = findingsOver(new Map())({ rig: {}, facts: {} });

const moreWords = (id: string): string => (MORE as Readonly<Record<string, string>>)[id] ?? '';

/** A complaint as people say it. Once a flow of its name is in the list, it leads there. */
interface Complaint {
  readonly id: string;
  readonly title: string;
  readonly words: string;
  /** Without a flow of its name: the one that is best at it. */
  readonly flow?: string;
  /** Where no flow knows it: what to read, and what to measure first. */
  readonly article?: string;
  readonly measure?: string;
}

/** The complaints that have words of their own, and every flow, whether words were written for it or not. */
function complaints(articles: readonly ArticleHead[]): readonly Document[] {
  const written: readonly Complaint[] = COMPLAINTS;
  const flows = new Map<string, (typeof FLOW_LIST)[number][1]>(FLOW_LIST);
  const said = written.map(({ id, title, words, flow: best, article, measure }): Document => {
    const flow = flows.get(id);
    if (flow) return { id: `complaint/${id}`, title: flow.title, words, path: flow.path, flow: id };
    const asks = best === undefined ? undefined : flows.get(best);
    // What was said is not taken along: which of it answers the questions there was never measured.
    if (asks) return { id: `complaint/${id}`, title, words, text: `Asked in “${asks.title}”`, path: asks.path };
    const reads = articles.find(({ slug }) => slug === article)?.title;
    if (reads === undefined || measure === undefined)
      throw new Error(
        `content/words/complaints.json: ${id} has no flow, and names none, no article or nothing to measure.`,
      );
    return { id: `complaint/${id}`, title, words, path: `read/${article}/`, measure, reads };
  });
  const unsaid = FLOW_LIST.filter(([id]) => !written.some((one) => one.id === id));
  return [
    ...said,
    ...unsaid.map(([id, { title, path, says, description }]) => ({
      id: `complaint/${id}`,
      title,
      words: says ?? '',
      text: shortOf(description),
      path,
      flow: id,
    })),
  ];
}

const calculators = (): readonly Document[] =>
  CALCULATORS.map(({ id, title, asks }) => ({
    id: `calculate/${id}`,
    title,
    words: moreWords(`calculate/${id}`),
    text: shortOf(asks),
    path: `calculate/${id}/`,
  }));

/** Hardly two lines of a phone: what is said of a place in a list. All of it stands where the place leads. */
const LONGEST_TEXT = 56;
const shortOf = (text: string): string =>
  text.length <= LONGEST_TEXT ? text : text.slice(0, LONGEST_TEXT).replace(/[\s,;]+\S*$/, '…');

/** What a word is, in a sentence or two, without what else is told of it: the whole entry opens where it was found. */
const beginOf = (text: string): string => /^.{22,}?[.!?](?=\s|$)/.exec(text)?.[0] ?? text;

const words = (): readonly Document[] =>
  ENTRIES.map(({ word, also, text, slug }) => ({
    id: `word/${slug}`,
    title: word,
    words: [also, moreWords(`word/${slug}`)].filter(Boolean).join(', '),
    text: shortOf(beginOf(text)),
    path: `words/#${slug}`,
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

/** What is only told, or is not about the bike. */
const NO_CHECK: ReadonlySet<Place> = new Set(['fitted', 'told', 'tools']);

/** The checks of the flows, as a terminal calls them. Each leads to the flow that asks it. */
async function steps(): Promise<readonly Document[]> {
  const found = new Map<string, Document>();
  for (const [, flow] of FLOW_LIST) {
    if (flow.kind !== 'fault') continue;
    for (const { id, short, place } of (await flow.load()).asked)
      if (!NO_CHECK.has(place))
        found.set(
          id,
          found.get(id) ?? { id: `step/${id}`, title: inWords(short, NOTHING), words: '', path: flow.path },
        );
  }
  return [...found.values()];
}

/** Everything that can be found. */
export async function allDocuments(articles: readonly ArticleHead[]): Promise<readonly Document[]> {
  const read = articles.map(({ slug, title, summary }) => ({
    id: `read/${slug}`,
    title,
    words: moreWords(`read/${slug}`),
    text: shortOf(summary),
    path: `read/${slug}/`,
  }));
  return [
    ...complaints(articles),
    ...calculators(),
    ...read,
    ...words(),
    ...places(),
    ...(await causes()),
    ...(await steps()),
  ];
}
