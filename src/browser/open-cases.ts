import { FLOWS } from '../case/flows.ts';
import { NEW_CASE } from './case-keys.ts';
import { type KeptCases, keptCases } from './kept-cases.ts';

/**
 * The start page of a device that keeps cases: the open ones are listed first, to go on with, and the way into their
 * flow says that it begins a new one.
 */

const counted = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

function inWords({ answers, earlier }: KeptCases): string {
  const parts = [
    answers > 0 ? `${counted(answers, 'answer', 'answers')} given` : '',
    earlier > 0 ? `${counted(earlier, 'earlier case', 'earlier cases')} kept` : '',
  ];
  return `${parts.filter(Boolean).join(', ')}.`;
}

function hinted(link: HTMLAnchorElement, title: string, hint: string): void {
  const words = document.createElement('span');
  const small = document.createElement('span');
  small.className = 'hint';
  small.textContent = hint;
  words.append(title, small);
  link.replaceChildren(words);
}

function show(): void {
  const place = document.querySelector<HTMLElement>('#open-cases');
  const list = place?.querySelector('ul');
  if (!place || !list) return;
  list.replaceChildren();
  for (const kept of keptCases()) {
    const { path, title } = FLOWS[kept.flow];
    const item = document.createElement('li');
    const goOn = document.createElement('a');
    goOn.href = (place.dataset['root'] ?? '/') + path;
    hinted(goOn, title, inWords(kept));
    item.append(goOn);
    list.append(item);
    const anew = document.querySelector<HTMLAnchorElement>(`a[data-flow="${kept.flow}"]`);
    if (!anew || kept.answers === 0) continue;
    anew.hash = NEW_CASE;
    hinted(anew, title, 'Begins a new case. The one you began is kept.');
  }
  place.hidden = !list.hasChildNodes();
}

show();
// A page that the browser had put to sleep has missed what was answered since.
window.addEventListener('pageshow', (event) => event.persisted && show());
