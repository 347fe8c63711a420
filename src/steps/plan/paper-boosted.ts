import type { ChoiceStep } from '../step.ts';
import { type Paper, paper } from './paper.ts';

export const paperBoosted: ChoiceStep<Paper> = paper(
  'paper-boosted',
  'Paper: bass boost',
  'Does the paper say that the bass boost is still in?',
  'What does the paper say about the bass boost: still in, or taken out?',
  'A profile has both full level and boost, or neither. The two answers together check the paper.',
  'In',
  'Out',
);
