import type { StepId } from '../../steps/ids.ts';
import { type Findings, isKnown } from '../../steps/outcome.ts';

/** What was set is written down before it is changed: nothing to ask for once a step has changed it, and said so first. */
export const writeDown = (f: Findings, changedBy: StepId, what = 'how everything is set now'): readonly string[] =>
  isKnown(f, changedBy) ? [] : [`Write down ${what}: somebody may have liked it.`];
