import { turnAway } from './turn-away.ts';

/*
 * The search of the start page: a field that is there at once. What finds is fetched when somebody first turns to it.
 */

const place = document.querySelector<HTMLElement>('#search');
const field = document.querySelector<HTMLInputElement>('#search-words');

if (place && field) {
  const root = new URL(place.dataset['root'] ?? '/', location.href);
  let bound = false;
  const bind = async () => {
    if (bound) return;
    bound = true;
    try {
      (await import('./bind-search.ts')).bindSearch(place, field, root);
    } catch {
      // The next turn tries again.
      bound = false;
    }
  };
  turnAway(place, field);
  field.addEventListener('focus', bind);
  field.addEventListener('input', bind);
  if (location.hash === `#${field.id}`) field.focus();
  if (field.value !== '') void bind();
  document.addEventListener('keydown', (event) => {
    const typing = event.target instanceof Element && event.target.matches('input, textarea, select');
    if (event.key !== '/' || typing) return;
    event.preventDefault();
    field.focus();
  });
}
