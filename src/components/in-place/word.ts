import { fetchedOnce } from '../../browser/fetched-once.ts';
import { element, sheet } from './open.ts';

interface Entry {
  readonly word: string;
  readonly also: string;
  readonly text: string;
  readonly article?: string;
}
/** The glossary. */
const entries = fetchedOnce((all: Readonly<Record<string, Entry>>) => all);

/** @param href of the word on the page of all words */
export async function openWord(href: string): Promise<void> {
  const address = new URL(href);
  const root = new URL('../', address);
  const entry = (await entries(new URL('words.json', root)))[decodeURIComponent(address.hash.slice(1))];
  if (!entry) throw new Error(`No word ${address.hash}`);
  for (const open of document.querySelectorAll<HTMLDialogElement>('dialog.in-place')) open.close();
  const { dialog, body } = sheet(entry.word);
  body.append(element('p', entry.text));
  if (entry.also !== '') body.append(element('p', `People also say: ${entry.also}`, 'hint'));
  if (entry.article !== undefined) {
    const more = element('a', 'Read more about it') as HTMLAnchorElement;
    more.href = new URL(`read/${entry.article}/`, root).href;
    const line = element('p', '');
    line.append(more);
    body.append(line);
  }
  dialog.showModal();
}
