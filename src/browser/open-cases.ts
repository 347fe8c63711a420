import { FLOWS } from '../case/flows.ts';
import { openCases } from './case-store.ts';

/** Lists the cases that this device keeps, on the start page, so that a rider who was called away finds the way back. */

const place = document.querySelector<HTMLElement>('#open-cases');
const list = place?.querySelector('ul');
for (const { flow, answers } of openCases()) {
  const item = document.createElement('li');
  const link = document.createElement('a');
  link.href = (place?.dataset['root'] ?? '/') + FLOWS[flow].path;
  link.textContent = `${FLOWS[flow].title} (${answers} ${answers === 1 ? 'answer' : 'answers'})`;
  item.append(link);
  list?.append(item);
}
if (place && list?.hasChildNodes()) place.hidden = false;
