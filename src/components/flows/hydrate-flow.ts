import { type ComponentType, h, hydrate } from 'preact';

/** Wakes the flow that the built page already shows. Without Astro's island loader: a page has one, and needs it at once. */
export function hydrateFlow(component: ComponentType<{ root: string }>): void {
  const place = document.getElementById('flow');
  if (place) hydrate(h(component, { root: place.dataset['root'] ?? '/' }), place);
}
