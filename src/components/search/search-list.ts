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

/** A line of the list: a link with its kind, its title and what is told of it. */
interface Line {
  readonly item: HTMLElement;
  readonly link: HTMLAnchorElement;
  readonly kind: Text;
  readonly title: Text;
  readonly told: Text;
  /** What stands in it. */
  key: string;
  /** Gives its address with the facts, while that is not packed yet. */
  pack: (() => Promise<string | undefined>) | undefined;
}

function emptyLine(): Line {
  const item = element('li', '');
  const link = element('a', '') as HTMLAnchorElement;
  const part = (name: string): Text => {
    const text = new Text();
    const made = element(name, '');
    made.append(text);
    link.append(made);
    return text;
  };
  const line: Line = {
    item,
    link,
    kind: part('small'),
    title: part('b'),
    told: part('span'),
    key: '',
    pack: undefined,
  };
  // Whoever is quicker than the packing gets what the line says all the same.
  link.addEventListener('click', (event) => {
    if (!line.pack || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    void line.pack().then((address) => location.assign(address ?? link.href));
  });
  item.append(link);
  return line;
}

/** The addresses that were packed, by the line. */
const addresses = new Map<string, string>();

const say = (place: Text, text: string): void => {
  if (place.data !== text) place.data = text;
};

/** Puts into a line what was found, where that is not what stands there. */
function fill(line: Line, found: Found, root: URL, factNames: Loaded['factNames']): void {
  const key = `${found.id} ${Object.entries(found.facts)}`;
  if (line.key === key) return;
  line.key = key;
  const { link } = line;
  link.setAttribute('href', addresses.get(key) ?? root.href + found.path);
  // A word opens where it was found.
  link.className = found.kind === 'word' ? 'term' : '';
  say(line.kind, KINDS[found.kind]);
  say(line.title, found.title);
  say(line.told, told(found, factNames));
  line.pack = undefined;
  if (Object.keys(found.facts).length === 0 || addresses.has(key)) return;
  line.pack = () => withFacts(found, root);
  // Packing takes longer than a key may.
  whenIdle(async () => {
    if (line.key !== key) return;
    const address = await withFacts(found, root);
    if (address === undefined) return;
    addresses.set(key, address);
    if (line.key !== key) return;
    link.href = address;
    line.pack = undefined;
  }, 100);
}

/** The lines of each list. They stay from key to key: to write into one costs less than to put another in its place. */
const linesOf = new WeakMap<Element, Line[]>();
function showLines(list: Element, all: readonly Found[], root: URL, factNames: Loaded['factNames']): void {
  const lines = linesOf.get(list) ?? [];
  linesOf.set(list, lines);
  for (const [i, found] of all.entries()) {
    const line = lines[i] ?? emptyLine();
    lines[i] = line;
    fill(line, found, root, factNames);
    if (!line.item.isConnected) list.append(line.item);
  }
  for (const { item } of lines.slice(all.length)) item.remove();
}

const indexAt = (root: URL) => loaded(new URL('search.json', root));
/** Fetches the index before it is asked. What goes wrong is said when it is. */
export const warm = (root: URL) => void indexAt(root).catch(() => {});

/** Says something of the list, unless it was said last. */
function speak(says: Element, className: string, text: string): void {
  if (says.className !== className) says.className = className;
  if (says.textContent !== text) says.textContent = text;
}

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
    showLines(list, found, root, factNames);
    const empty = words.trim().length < 2;
    if (empty) speak(says, 'sr-only', '');
    else if (found.length === 0) speak(says, 'hint', 'Nothing fits. Try fewer words, or other ones.');
    else speak(says, 'sr-only', `${found.length} found. The first: ${found[0]?.title}.`);
  } catch {
    if (turn !== latest) return;
    speak(says, 'notice', 'The list for searching could not be loaded. It needs the network once.');
  }
}
