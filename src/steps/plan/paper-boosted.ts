import type { ChoiceStep } from '../step.ts';
import { type Paper, paper } from './paper.ts';

export const paperBoosted: ChoiceStep<Paper> = paper(
  'paper-boosted',
  'Paper: bass boost',
  'Does the paper say that the bass boost is in?',
  'What does the paper say about the bass boost: still in, or taken out?',
  'A profile has the full level and the boost, or neither. Both answers together check the paper.',
  'In',
  'Out',
);
