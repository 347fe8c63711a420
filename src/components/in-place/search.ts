import { bindSearch } from '../search/bind-search.ts';
import { element, sheet } from './open.ts';

/** @param href of the field on the start page, which does the same */
export function openSearch(href: string): void {
  // One that was just closed is still there for a moment.
  const open = document.querySelector<HTMLInputElement>('dialog.in-place[open] input');
  if (open) {
    open.focus();
    return;
  }
  const { dialog, body } = sheet('Search');
  const place = element('search', '', 'search');
  const label = element('label', 'Say it in your words') as HTMLLabelElement;
  const field = document.createElement('input');
  field.type = 'search';
  field.id = 'search-words';
  field.maxLength = 120;
  field.autocomplete = 'off';
  field.spellcheck = false;
  field.placeholder = 'rear dead after reflash';
  label.htmlFor = field.id;
  const says = element('p', '', 'sr-only');
  says.setAttribute('role', 'status');
  const box = element('div', '', 'found-box');
  box.append(says, element('ul', '', 'found'));
  place.append(label, field, box);
  body.append(place);
  // The browser's own Escape would only empty the field first.
  field.addEventListener('keydown', ({ key }) => {
    if (key !== 'Escape') return;
    dialog.close();
    // Until the next frame the keyboard would still be in the field of the closed dialog.
    field.blur();
  });
  dialog.showModal();
  field.focus();
  bindSearch(place, field, new URL('.', href));
}
