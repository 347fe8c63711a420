/*
 * The search and the words of the glossary open over any page, so that nobody leaves a case for them. What is needed for
 * that is fetched when the first of them is opened; where that fails, the link leads to the page that has it.
 */

const OPENS = 'a.term, a#search-link';

async function open(link: HTMLAnchorElement): Promise<void> {
  try {
    await (await import('./open.ts')).open(link);
  } catch {
    location.href = link.href;
  }
}

document.addEventListener('click', (event) => {
  if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
  const link = event.target instanceof Element ? event.target.closest<HTMLAnchorElement>(OPENS) : null;
  if (!link) return;
  event.preventDefault();
  void open(link);
});

document.addEventListener('keydown', (event) => {
  const link = document.querySelector<HTMLAnchorElement>('a#search-link');
  const typing = event.target instanceof Element && event.target.matches('input, textarea, select');
  if (event.key !== '/' || !link || typing || event.ctrlKey || event.metaKey || event.altKey) return;
  event.preventDefault();
  void open(link);
});
