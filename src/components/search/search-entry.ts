/*
 * The search of every page: a field that is there at once, and a list that loads when somebody first types. The key `/`
 * opens it, Escape closes it, the arrows go through what was found.
 */

const place = document.querySelector<HTMLElement>('#search');
const field = document.querySelector<HTMLInputElement>('#search-words');
const button = document.querySelector<HTMLButtonElement>('#search-button');

const isTyping = () =>
  document.activeElement instanceof HTMLElement && document.activeElement.matches('input, textarea, select');

function open(): void {
  if (!place || !field) return;
  place.hidden = false;
  button?.setAttribute('aria-expanded', 'true');
  field.focus();
}
function close(): void {
  if (!place || !field || !button) return;
  place.hidden = true;
  button.setAttribute('aria-expanded', 'false');
  button.focus();
}

if (place && field) {
  if (location.hash === `#${field.id}`) field.focus();
  const loaded = () => import('./search-list.ts');
  const show = async () => (await loaded()).show(place, field.value);
  field.addEventListener('focus', loaded, { once: true });
  field.addEventListener('input', show);
  if (field.value !== '') void show();
  button?.addEventListener('click', () => (place.hidden ? open() : close()));
  document.addEventListener('keydown', (event) => {
    if (event.key === '/' && !isTyping()) {
      event.preventDefault();
      open();
    }
    if (!place.contains(document.activeElement)) return;
    if (event.key === 'Escape') close();
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    if (step === 0) return;
    event.preventDefault();
    const stops: readonly HTMLElement[] = [field, ...place.querySelectorAll('a')];
    const at = stops.indexOf(document.activeElement as HTMLElement);
    stops[Math.min(stops.length - 1, Math.max(0, at + step))]?.focus();
  });
}
