import { onceEach } from '../compute/once-each.ts';
import { parseQuantity, type Unit } from '../compute/quantity.ts';
import type { Rig } from '../rig/rig.ts';
import type { KnownOf, StepId } from './ids.ts';
import type { Answer, Facts, ReadingStep, Situation, Step, Values } from './step.ts';

/** The numbers in the readings of an answer. A reading that is missing or not a number is left out. */
export function valuesIn(answer: Answer | undefined, step: ReadingStep): Values {
  if (!answer || !('readings' in answer)) return {};
  const values: Record<string, number> = {};
  for (const [name, reading] of Object.entries(step.readings)) {
    const text = answer.readings[name];
    if (text === undefined || text.trim() === '') continue;
    const parsed = parseQuantity(text, reading.unit);
    if (parsed.ok) values[name] = parsed.over ? Infinity : parsed.value;
  }
  return values;
}

/** Whether a step was answered with this option, in the raw facts: for what is asked before an outcome is worked out. */
export function answeredWith<Id extends StepId>(facts: Facts, step: Id, option: KnownOf<Id>): boolean {
  const answer = facts[step];
  return answer !== undefined && 'option' in answer && answer.option === option;
}

/** One number of an answer, whichever flow asked for it; undefined where there is none. */
export function numberIn(answer: Answer | undefined, reading: string, unit: Unit): number | undefined {
  const text = answer && 'readings' in answer ? answer.readings[reading] : undefined;
  const parsed = text === undefined ? undefined : parseQuantity(text, unit);
  return parsed?.ok && !parsed.over ? parsed.value : undefined;
}

/** The names of the readings that must be there and are not. */
export const missingReadings = (step: ReadingStep, values: Values): readonly string[] =>
  Object.entries(step.readings).flatMap(([name, reading]) =>
    reading.optional || values[name] !== undefined ? [] : [name],
  );

/** The options that a step offers on this bike. */
export function offered(step: Step, situation: Situation): readonly (readonly [option: string, label: string])[] {
  if (step.kind === 'reading') return [];
  const leftOut = step.kind === 'choice' ? (step.leftOut?.(situation) ?? []) : [];
  return Object.entries(step.options).filter(([option]) => !leftOut.includes(option));
}

/** Whether an answer can be used with a step at all: an option it has, or readings that are whole and possible. */
export function usable(step: Step, answer: Answer, situation: Situation): boolean {
  if ('cannot' in answer) return true;
  if (step.kind !== 'reading')
    return 'option' in answer && offered(step, situation).some(([option]) => option === answer.option);
  const values = valuesIn(answer, step);
  if (missingReadings(step, values).length > 0) return false;
  const possible = Object.entries(values).every(([name, value]) => isPossible(step, name, value));
  return possible && !step.unusable?.(values, situation);
}

/** Whether a meter can honestly show this value here. An open circuit reads as infinite ohms. */
export function isPossible(step: ReadingStep, reading: string, value: number): boolean {
  const limits = step.readings[reading]?.possible;
  return limits !== undefined && value >= limits[0] && value <= limits[1];
}

/**
 * What is known of a step: its outcome, 'cannot', or undefined while it has to be asked. An answer that cannot be used
 * counts as not given, so it is asked again and nothing goes on from nonsense.
 */
export function outcomeOf(step: Step, situation: Situation): string | undefined {
  const answer = situation.facts[step.id];
  if (!answer) return step.kind === 'rig' ? step.known(situation.rig) : undefined;
  if (!usable(step, answer, situation)) return undefined;
  if ('cannot' in answer) return 'cannot';
  if ('option' in answer) return answer.option;
  return step.kind === 'reading' ? step.judge(valuesIn(answer, step), situation) : undefined;
}

/** The rig with everything that the rig questions say, whether they were answered or the rig already did. */
export function learnedRig(rig: Rig, steps: readonly Step[], facts: Situation['facts']): Rig {
  return steps.reduce((known, step) => {
    if (step.kind !== 'rig') return known;
    const answer = facts[step.id];
    if (!answer) return step.complete?.(known) ?? known;
    return 'option' in answer && Object.hasOwn(step.options, answer.option) ? step.learn(answer.option, known) : known;
  }, rig);
}

/** What is known of a case, in the form that claims and verdicts ask it. */
export interface Findings extends Situation {
  /** What an answered step means on this bike, 'cannot', or undefined when it was not asked. */
  outcome<Id extends StepId>(step: Id): KnownOf<Id> | undefined;
  /** The numbers of an answered measurement, by reading. */
  values(step: StepId): Values;
}

/** Whether a step came out in one of these ways. */
export function is<Id extends StepId>(f: Findings, step: Id, ...outcomes: readonly KnownOf<Id>[]): boolean {
  const known = f.outcome(step);
  return known !== undefined && outcomes.includes(known);
}

/** Whether a step was asked and could be done, however it came out. */
export function isKnown(f: Findings, step: StepId): boolean {
  const known = f.outcome(step);
  return known !== undefined && known !== 'cannot';
}

/** The outcome of a step whose id comes out of a table or a link. A condition names its step: see `is`. */
export const outcomeNamed = (f: Findings, id: string): string | undefined => f.outcome(id as StepId);

/** Findings from outcomes by any name, as tables and facts have them. */
export const findingsFrom = (
  situation: Situation,
  outcome: (id: string) => string | undefined,
  values: (id: string) => Values,
): Findings => ({ ...situation, outcome: (id) => outcome(id) as KnownOf<typeof id> | undefined, values });

/** Findings over the steps of one flow. A step of another flow counts as not asked. */
export const findingsOver =
  (steps: ReadonlyMap<string, Step>) =>
  (situation: Situation): Findings =>
    findingsFrom(
      situation,
      onceEach((id) => {
        const step = steps.get(id);
        return step && outcomeOf(step, situation);
      }),
      (id) => {
        const step = steps.get(id);
        return step?.kind === 'reading' ? valuesIn(situation.facts[id], step) : {};
      },
    );
