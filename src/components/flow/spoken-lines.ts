import { offered } from '../../steps/outcome.ts';
import { inWords, type Situation, type Step } from '../../steps/step.ts';
import type { Ready } from './ready.ts';

/** Sentence by sentence: whoever listens does one thing at a time. */
const sentences = (text: string): readonly string[] => text.split(/(?<=[.?!…])\s+(?=[A-Z0-9“])/);

/** The answers as they are read out: every one that is offered, or the readings that are wanted. */
function answersIn(step: Step, situation: Situation): string {
  if (step.kind === 'reading')
    return `Then read me: ${Object.values(step.readings)
      .map(({ label }) => inWords(label, situation))
      .join('; ')}.`;
  const labels = offered(step, situation).map(([, label]) => `“${label}”`);
  return `The answers are: ${labels.join(', ')}. Or: you don’t know.`;
}

/**
 * What is said to a caller, a line at a time. He hears nothing else: first what to be careful of and what to do, then what
 * stands already and stays so, then the question, and every answer that it has.
 */
export const spokenLines = (step: Step, situation: Situation, { care, phone, standing }: Ready): readonly string[] => [
  ...care,
  ...phone,
  ...(standing.length > 0 ? [`Leave as it is: ${standing.join(', ')}.`] : []),
  ...sentences(inWords(step.phone, situation)),
  answersIn(step, situation),
];
