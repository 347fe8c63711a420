import { offered, outcomeOf } from '../steps/outcome.ts';
import type { Answer, ReadingStep, Situation, Step } from '../steps/step.ts';
import type { Observe } from './observe.ts';

/** Who answers, told apart by what he has and where he errs. Each wraps one who sees and says what is there. */

/** Somebody without a meter: every measurement is "I can't". */
export const withoutMeter =
  (observe: Observe): Observe =>
  (step, bike, situation) =>
    step.id === 'tools-at-hand'
      ? { option: 'none' }
      : step.tool === 'meter'
        ? { cannot: true }
        : observe(step, bike, situation);

/** Somebody who cannot do one of the steps. */
export const unableTo =
  (stepId: string, observe: Observe): Observe =>
  (step, bike, situation) =>
    step.id === stepId ? { cannot: true } : observe(step, bike, situation);

/** Readings as a slip of the hand gives them: nothing, a tenth, a third, thrice, an open circuit. */
const SLIPS: readonly ((value: string) => string)[] = [
  () => '0',
  () => 'OL',
  (value) => String(0.1 * Number(value)),
  (value) => String(0.3 * Number(value)),
  (value) => String(3 * Number(value)),
];

function* slipsOf(step: ReadingStep, answer: Extract<Answer, { readings: unknown }>): Generator<Answer> {
  const names = Object.keys(answer.readings);
  for (const slip of SLIPS) {
    for (const name of names) yield { readings: { ...answer.readings, [name]: slip(answer.readings[name] ?? '0') } };
    // The reference is read right, and everything that is judged by it is not.
    const [reference, ...judged] = Object.keys(step.readings);
    yield {
      readings: {
        ...answer.readings,
        ...Object.fromEntries(
          (judged.length > 0 ? judged : [reference ?? '']).map((name) => [name, slip(answer.readings[name] ?? '0')]),
        ),
      },
    };
  }
}

/** The answers to a step that mean something else than this one does, one for each outcome. */
export function falseAnswers(step: Step, answer: Answer, situation: Situation): readonly Answer[] {
  if ('cannot' in answer) return [];
  const meaning = (given: Answer) => outcomeOf(step, { ...situation, facts: { ...situation.facts, [step.id]: given } });
  const candidates: Iterable<Answer> =
    step.kind === 'reading'
      ? 'readings' in answer
        ? slipsOf(step, answer)
        : []
      : offered(step, situation).map(([option]) => ({ option }));
  const found = new Map<string, Answer>();
  const truth = meaning(answer);
  for (const candidate of candidates) {
    const outcome = meaning(candidate);
    if (outcome !== undefined && outcome !== truth && outcome !== 'cannot' && !found.has(outcome))
      found.set(outcome, candidate);
  }
  return [...found.values()];
}
