/*
 * The search and the words of the glossary open over any page, so that nobody leaves a case for them. What is needed for
 * that is fetched when the first of them is opened; where that fails, the link leads to the page that has it.
 */

function opens(event: Event, link: HTMLAnchorElement | null): void {
  if (!link) return;
  event.preventDefault();
  import('./open.ts').then(({ open }) => open(link)).catch(() => location.assign(link.href));
}

addEventListener('click', (event) => {
  // With a key held down it opens in a tab or a window of its own.
  if (!event.ctrlKey && !event.metaKey && !event.shiftKey)
    opens(event, (event.target as Element).closest('.term, #search-link'));
});
addEventListener('keydown', (event) => {
  if (event.key === '/' && !(event.target as Element).matches('input, textarea, select'))
    opens(event, document.querySelector('#search-link'));
});
