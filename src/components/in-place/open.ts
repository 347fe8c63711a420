/** An element with a text in it. Never markup: what is shown may have been typed. */
export function element(name: string, text: string, className = ''): HTMLElement {
  const made = document.createElement(name);
  made.textContent = text;
  if (className !== '') made.className = className;
  return made;
}

/** What opens over a page: a heading, what it is about, and a way to close it. */
export interface Sheet {
  readonly dialog: HTMLDialogElement;
  readonly body: HTMLElement;
}

/** A dialog of the browser's own: Escape closes it, and the keyboard is back where it was. */
export function sheet(title: string): Sheet {
  const dialog = document.createElement('dialog');
  dialog.className = 'in-place';
  const heading = element('h2', title);
  heading.id = 'in-place-title';
  dialog.setAttribute('aria-labelledby', heading.id);
  const close = element('button', 'Close', 'plain') as HTMLButtonElement;
  close.type = 'button';
  close.addEventListener('click', () => dialog.close());
  const body = element('div', '');
  const head = element('div', '', 'in-place-head');
  head.append(heading, close);
  dialog.append(head, body);
  // A tap beside it closes it, too.
  dialog.addEventListener('click', ({ target }) => target === dialog && dialog.close());
  dialog.addEventListener('close', () => dialog.remove());
  document.body.append(dialog);
  return { dialog, body };
}

/** Opens the search, or the entry of a word, over the page. */
export async function open(link: HTMLAnchorElement): Promise<void> {
  if (link.id === 'search-link') return (await import('./search.ts')).openSearch(link.href);
  return (await import('./word.ts')).openWord(link.href);
}
