import { contradiction } from '../diagnosis/contradiction.ts';
import { findingsOver } from '../steps/outcome.ts';
import type { Advise } from './play.ts';

/** What the page does after each answer: it looks for one that cannot stand with the others. */
export const advise: Advise = ({ flow, signs, evidence }, situation, checked) => {
  const findings = findingsOver(flow.steps)(situation);
  const outcomes = new Map(
    [...flow.steps.keys()].flatMap((id) => {
      const outcome = findings.outcome(id);
      return outcome === undefined ? [] : [[id, outcome] as const];
    }),
  );
  return contradiction(evidence, outcomes, {
    minutesOf: (step) => flow.steps.get(step)?.minutes ?? Infinity,
    sound: signs.sound,
    checked,
  })?.step;
};
