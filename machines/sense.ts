import { type Findings, is, outcomeNamed } from '../src/steps/outcome.ts';
import type { Step } from '../src/steps/step.ts';

/** Whether a step may be asked at all, as far as sense and tools go. */

export const hasNoMeter = (f: Findings): boolean => is(f, 'tools-at-hand', 'none', 'cannot');

const makesSense = (step: Step, f: Findings): boolean =>
  outcomeNamed(f, step.id) === undefined && (step.sensible?.(f) ?? true);

export const canBeAsked = (step: Step, f: Findings): boolean =>
  makesSense(step, f) && !(step.tool === 'meter' && hasNoMeter(f));
