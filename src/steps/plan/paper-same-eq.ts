import type { ChoiceStep } from '../step.ts';
import { type Paper, paper } from './paper.ts';

export const paperSameEq: ChoiceStep<Paper> = paper(
  'paper-same-eq',
  'Paper: EQ',
  'Does the paper say that the EQ stays the same when the engine runs?',
  'What does the paper say about the EQ: the same with the engine running, or a different one?',
  'Two kinds of amplified profile differ only in this.',
  'The same',
  'A different one',
);
