import type { Probes, Reading, ReadingStep, Situation } from './step.ts';

/** Where the leads go for one reading of a step, or null when that is no point of the drawing. */
export function probesOf(step: ReadingStep, reading: Reading | undefined, situation: Situation): Probes | null {
  const probes = reading?.probes ?? step.probes;
  if (probes === 'not drawn') return null;
  return typeof probes === 'function' ? probes(situation) : probes;
}
