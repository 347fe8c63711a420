import { element, sheet } from './open.ts';

interface Entry {
  readonly word: string;
  readonly also: string;
  readonly text: string;
  readonly article?: string;
}
let waiting: Promise<Readonly<Record<string, Entry>>> | undefined;

/** The glossary is fetched once. When that fails, the next word tries again. */
function entries(root: URL): NonNullable<typeof waiting> {
  waiting ??= fetch(new URL('words.json', root)).then((answer) => {
    if (!answer.ok) throw new Error(`words.json: ${answer.status}`);
    return answer.json();
  });
  waiting.catch(() => {
    waiting = undefined;
  });
  return waiting;
}

/** @param href of the word on the page of all words */
export async function openWord(href: string): Promise<void> {
  const address = new URL(href);
  const root = new URL('../', address);
  const entry = (await entries(root))[decodeURIComponent(address.hash.slice(1))];
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
