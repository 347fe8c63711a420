/* What only the page of a fault flow has, and only once the first question is there. */
export { doubtInWords } from './doubt.ts';
export { FaultEnd } from './FaultEnd.tsx';
export { Meanings } from './Meanings.tsx';
export { OutOfTurn } from './OutOfTurn.tsx';
export { Suspects } from './Suspects.tsx';
export { viewOf } from './view.ts';
export { whyNow } from './why-now.ts';
