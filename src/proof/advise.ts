import { answerToCheck } from '../diagnosis/advice.ts';
import type { Advise } from './play.ts';

/** What the page does after each answer: it looks for one that cannot stand with the others. */
export const advise: Advise = ({ flow, tableFor }, situation, checked) =>
  answerToCheck(flow.steps, situation, tableFor(situation), checked)?.step;
