import { show, warm } from './search-list.ts';

/** Shows what is found while somebody types; the arrows go through it. */
export function bindSearch(place: HTMLElement, field: HTMLInputElement, root: URL): void {
  const now = () => void show(place, field.value, root);
  field.addEventListener('input', now);
  warm(root);
  if (field.value !== '') now();
  place.addEventListener('keydown', (event) => {
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    if (step === 0) return;
    event.preventDefault();
    const stops: readonly HTMLElement[] = [field, ...place.querySelectorAll<HTMLElement>('.found a')];
    const at = stops.indexOf(document.activeElement as HTMLElement);
    stops[Math.min(stops.length - 1, Math.max(0, at + step))]?.focus();
  });
}
