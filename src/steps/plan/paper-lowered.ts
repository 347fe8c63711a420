import type { ChoiceStep } from '../step.ts';
import { type Paper, paper } from './paper.ts';

export const paperLowered: ChoiceStep<Paper> = paper(
  'paper-lowered',
  'Paper: level',
  'Does the paper say that the output level is lowered?',
  'What does the paper say about the level: full for speakers, or lowered for an amplifier?',
  'Only an amplified profile lowers it.',
  'Lowered',
  'Full',
);
