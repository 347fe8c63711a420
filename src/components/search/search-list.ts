import { fetchedOnce } from '../../browser/fetched-once.ts';
import { whenIdle } from '../../browser/when-idle.ts';
import type { Case } from '../../case/events.ts';
import { toLink } from '../../case/link.ts';
import { KINDS } from '../../search/document.ts';
import { type Finder, type Found, finder } from '../../search/find.ts';
import type { IndexFile } from '../../search/index-file.ts';
import { type PackedIndex, unpacked } from '../../search/packed.ts';
import { element } from '../in-place/open.ts';

interface Loaded {
  readonly find: Finder;
  readonly factNames: IndexFile['factNames'];
}
/** Words as they come, known, misspelt, begun and asking. */
const WARMING =
  'rear dead after reflash|no muscic frmo the bakc|hinten kein tno seit re|how to mesure|amplfier wont trun on|waht size wrie|lefft spekar ded|batery drians|crakles wenh loud|protcet lihgt'.split(
    '|',
  );
/** The index, in the form that it is asked in. */
const loaded = fetchedOnce((packed: PackedIndex): Loaded => {
  const { factNames, ...index } = unpacked(packed);
  const find = finder(index);
  // The browser translates what finds when it is first run. That is over before the first key.
  for (const words of WARMING) whenIdle(() => void find(words), 100);
  return { find, factNames };
});

/** The address of what was found with the facts that the words gave, as a case that begins with them. */
async function withFacts(found: Found, root: URL): Promise<string | undefined> {
  const facts = Object.entries(found.facts);
  if (found.flow === undefined || facts.length === 0) return undefined;
  const it: Case = {
    flow: found.flow,
    events: facts.map(([step, option]) => ({ type: 'answer', step, answer: { option } })),
  };
  return `${new URL(found.path, root).href}#${await toLink(it)}`;
}

function told(found: Found, factNames: Loaded['factNames']): string {
  const names = Object.entries(found.facts).map(([step, option]) => `“${factNames[`${step}=${option}`]}”`);
  if (names.length > 0) return `Takes along what you said: ${names.join(', ')}`;
  if (found.measure !== undefined)
    return `No questions for this yet, but “${found.reads}” to read. Measure first: ${found.measure}`;
  return found.text ?? '';
}

function line(found: Found, root: URL, factNames: Loaded['factNames']): HTMLElement {
  const item = element('li', '');
  const link = element('a', '') as HTMLAnchorElement;
  link.href = root.href + found.path;
  // Packing takes longer than a key may.
  whenIdle(async () => {
    const address = await withFacts(found, root);
    if (address !== undefined) link.href = address;
  }, 100);
  // A word opens where it was found.
  if (found.kind === 'word') link.className = 'term';
  link.append(element('small', KINDS[found.kind]), element('b', found.title), element('span', told(found, factNames)));
  item.append(link);
  return item;
}

/** The lines that were made, by what they say: most of them stand there at the next key, too. */
const made = new Map<string, HTMLElement>();
const lineOf = (found: Found, root: URL, factNames: Loaded['factNames']): HTMLElement => {
  const key = `${found.id} ${Object.entries(found.facts)}`;
  const item = made.get(key) ?? line(found, root, factNames);
  made.set(key, item);
  return item;
};

const indexAt = (root: URL) => loaded(new URL('search.json', root));
/** Fetches the index before it is asked. What goes wrong is said when it is. */
export const warm = (root: URL) => void indexAt(root).catch(() => {});

let latest = 0;
/** Shows what fits the words. What was asked before and comes late is dropped. */
export async function show(place: HTMLElement, words: string, root: URL): Promise<void> {
  const turn = ++latest;
  const list = place.querySelector('.found');
  const says = place.querySelector('[role="status"]');
  if (!list || !says) return;
  try {
    const { find, factNames } = await indexAt(root);
    if (turn !== latest) return;
    const found = find(words);
    const items = found.map((each) => lineOf(each, root, factNames));
    if (items.length !== list.children.length || items.some((item, i) => item !== list.children[i]))
      list.replaceChildren(...items);
    const empty = words.trim().length < 2;
    says.className = found.length > 0 || empty ? 'sr-only' : 'hint';
    says.textContent = empty
      ? ''
      : found.length === 0
        ? 'Nothing fits. Try fewer words, or other ones.'
        : `${found.length} found. The first: ${found[0]?.title}.`;
  } catch {
    if (turn !== latest) return;
    says.className = 'notice';
    says.textContent = 'The list for searching could not be loaded. It needs the network once.';
  }
}
