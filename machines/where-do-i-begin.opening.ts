import { whatPlays } from '../src/steps/ears/what-plays.ts';
import type { Opening } from './opening.ts';

export const opening: Opening = {
  id: 'where-do-i-begin',
  title: 'Where do I begin?',
  fitted: [whatPlays],
  told: [],
};
