import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { inWords, type Situation, type Words } from '../../src/steps/step.ts';

/** What is known where words hang on it: nothing; one side silent; which of two amplifiers is meant. */
export const TOLD: readonly Situation[] = [
  { rig: {}, facts: {} },
  ...['left', 'right'].map((option) => ({ rig: {}, facts: { 'which-silent': { option } } })),
  ...['front-left', 'rear-right', 'left'].map((option) => ({ rig: {}, facts: { 'which-corner': { option } } })),
  ...['rear', 'front'].map((option) => ({ rig: EXAMPLE_RIGS.trunk, facts: { 'which-amp': { option } } })),
];

/** Every wording of some words. */
export const allWords = (words: Words): readonly string[] => [...new Set(TOLD.map((it) => inWords(words, it)))];

/** The words where nothing is known. */
export const plainly = (words: Words): string => inWords(words, { rig: {}, facts: {} });
