import type { Rig } from '../../src/rig/rig.ts';
import { outcomeOf, usable, valuesIn } from '../../src/steps/outcome.ts';
import type { Facts, ReadingStep, Situation, Step } from '../../src/steps/step.ts';

/** The smallest AC digit of a meter: one with a mV range, a usual one, a basic one. */
export type Digit = '0.001' | '0.01' | '0.1';

/** A bike, a meter, and what was answered before. */
export const on = (rig: Rig, digit: Digit = '0.01', facts: Facts = {}): Situation => ({
  rig,
  facts: { 'meter-digit': { option: digit }, ...facts },
});

/** A step whose outcomes are named by its own type, as one whose outcomes are any text. */
export const anyStep = (step: { readonly kind: 'reading'; readonly id: string }) => step as unknown as ReadingStep;

export type Readings = Readonly<Record<string, string | number>>;
const asTyped = (readings: Readings) =>
  Object.fromEntries(Object.entries(readings).map(([name, value]) => [name, String(value)]));

const answering = (step: Step, readings: Readings, situation: Situation): Situation => ({
  ...situation,
  facts: { ...situation.facts, [step.id]: { readings: asTyped(readings) } },
});

/** What readings mean, typed as a person types them. Undefined when they cannot be used. */
export const judged = (step: { readonly kind: 'reading'; readonly id: string }, readings: Readings, s: Situation) =>
  outcomeOf(anyStep(step), answering(anyStep(step), readings, s));

export const canBeUsed = (step: { readonly kind: 'reading'; readonly id: string }, readings: Readings, s: Situation) =>
  usable(anyStep(step), { readings: asTyped(readings) }, s);

/** Why readings cannot be used: the reading to blame and what to do, or null. */
export function whyUnusable(step: { readonly kind: 'reading'; readonly id: string }, readings: Readings, s: Situation) {
  const any = anyStep(step);
  return any.unusable?.(valuesIn({ readings: asTyped(readings) }, any), s) ?? null;
}
