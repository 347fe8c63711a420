import type { Rig } from '../../src/rig/rig.ts';
import type { Answer, Facts, ReadingStep, Situation } from '../../src/steps/step.ts';

/** The smallest AC digit of a meter: one with a mV range, a usual one, a basic one. */
export type Digit = '0.001' | '0.01' | '0.1';

/** A bike, a meter, and what was answered before. */
export const on = (rig: Rig, digit: Digit = '0.01', facts: Facts = {}): Situation => ({
  rig,
  facts: { 'meter-digit': { option: digit }, ...facts },
});

/** A step of a flow keeps the names of its own outcomes; what is tested over many steps does not need them. */
export const asStep = (step: { readonly id: string }) => step as unknown as ReadingStep;

export const typed = (readings: Readonly<Record<string, string>>): Answer => ({ readings });
