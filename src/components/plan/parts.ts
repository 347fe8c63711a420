/* What only the page of a plan or of a reading has, and only once the first question is there. */
export { VerdictView } from './VerdictView.tsx';
