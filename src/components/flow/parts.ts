/*
 * The parts of a flow page that the first question does not need: they come in one file of their own, once the page is
 * awake, so that a slow phone can answer the first question before it has read them.
 */
export { answerToCheck } from '../../diagnosis/advice.ts';
export { CheckAgain } from './CheckAgain.tsx';
export { Measuring } from './Measuring.tsx';
export { Notes } from './Notes.tsx';
export { Share } from './Share.tsx';
export { NextLikeliest, RankedSoFar, SuspectStrip } from './Suspects.tsx';
export { VerdictView } from './VerdictView.tsx';
