import { offered } from '../../steps/outcome.ts';
import { inWords, type Situation, type Step } from '../../steps/step.ts';
import type { Ready } from './ready.ts';

/** Sentence by sentence: whoever listens does one thing at a time. */
const sentences = (text: string): readonly string[] => text.split(/(?<=[.?!…])\s+(?=[A-Z0-9“])/);

/** So much is kept in mind at a time, and said in one breath. Common practice on the phone, no published source. */
const MOST_AT_A_TIME = 4;
const MOST_WORDS = 26;

const wordsIn = (labels: readonly string[]): number => labels.join(' ').split(/\s+/).length;

/** Answers in breaths: at most four at a time, fewer where they are long. */
function breaths(labels: readonly string[]): readonly (readonly string[])[] {
  const groups: string[][] = [];
  for (const label of labels) {
    const last = groups.at(-1);
    if (last && last.length < MOST_AT_A_TIME && wordsIn([...last, label]) <= MOST_WORDS) last.push(label);
    else groups.push([label]);
  }
  return groups;
}

const list = (labels: readonly string[]): string => labels.map((label) => `“${label}”`).join(', ');

/** The answers as they are read out: every one that is offered, or the readings that are wanted. */
function answersIn(step: Step, situation: Situation): readonly string[] {
  if (step.kind === 'reading')
    return [
      `Then read me: ${Object.values(step.readings)
        .map(({ label }) => inWords(label, situation))
        .join('; ')}.`,
    ];
  const groups = breaths(offered(step, situation).map(([, label]) => label));
  const [first = []] = groups;
  if (groups.length === 1) return [`The answers are: ${list(first)}. Or: you don’t know.`];
  const ofThese = (labels: readonly string[]) => (labels.length === 1 ? 'this' : 'one of these');
  return [
    ...groups.map((labels, i) => `${i === 0 ? 'Is it' : 'Or'} ${ofThese(labels)}: ${list(labels)}?`),
    'Or: you don’t know.',
  ];
}

/**
 * What is said to a caller, a line at a time. He hears nothing else: first why it is asked once more, what to be careful of and what to do, then what
 * stands already and stays so, then the question, and every answer that it has.
 */
export const spokenLines = (
  step: Step,
  situation: Situation,
  { care, phone, standing }: Ready,
  doubt?: string,
): readonly string[] => [
  ...(doubt === undefined ? [] : sentences(doubt)),
  ...care,
  ...phone,
  ...(standing.length > 0 ? [`Leave as it is: ${standing.join(', ')}.`] : []),
  ...sentences(inWords(step.phone, situation)),
  ...answersIn(step, situation),
];
