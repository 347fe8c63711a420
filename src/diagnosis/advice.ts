import { findingsOver, outcomeNamed } from '../steps/outcome.ts';
import type { Situation, Step } from '../steps/step.ts';
import { type Contradiction, contradiction } from './contradiction.ts';
import type { Signs } from './signs.ts';

/** What is known beforehand of those who can be behind a complaint. */
export interface Evidence {
  readonly evidence: readonly Signs[];
  /** What a bike without a fault shows, by step. */
  readonly sound: Readonly<Record<string, string>>;
}

/**
 * The answer that the rider is asked to check again, or null while everything fits. It is looked for after each answer,
 * among all that is known: what he answered, and what "my bike" says.
 * @param checked steps whose answers were given again and stayed
 */
export function answerToCheck(
  steps: ReadonlyMap<string, Step>,
  situation: Situation,
  { evidence, sound }: Evidence,
  checked: ReadonlySet<string>,
): Contradiction | null {
  const findings = findingsOver(steps)(situation);
  const outcomes = new Map(
    [...steps.keys()].flatMap((id) => {
      const outcome = outcomeNamed(findings, id);
      return outcome === undefined ? [] : [[id, outcome] as const];
    }),
  );
  return contradiction(evidence, outcomes, {
    minutesOf: (step) => steps.get(step)?.minutes ?? Infinity,
    sound,
    checked,
  });
}
