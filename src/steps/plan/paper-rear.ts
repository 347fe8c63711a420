import type { ChoiceStep } from '../step.ts';
import { type Paper, paper } from './paper.ts';

export const paperRear: ChoiceStep<Paper> = paper(
  'paper-rear',
  'Paper: rear',
  'Does the paper say that the rear channels are on?',
  'What does the paper say about the rear channels: on or off?',
  'Only the unaltered profile of a bike built with front speakers has them off.',
  'On',
  'Off',
);
