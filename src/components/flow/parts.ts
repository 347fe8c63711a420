/*
 * The parts of any flow page that the first question does not need: they come in one file of their own, once the page is
 * awake, so that a slow phone can answer the first question before it has read them.
 */
export { articleOf } from '../../steps/article-of.ts';
export { Before } from './Before.tsx';
export { CaseFile } from './CaseFile.tsx';
export { Measuring, ToneOf } from './Measuring.tsx';
export { Notes } from './Notes.tsx';
export { isPreparedFirst } from './preparing.ts';
export { readyFor } from './ready.ts';
export { Share } from './Share.tsx';
export { Terms } from './Terms.tsx';
