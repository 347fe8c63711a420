import type { Step } from '../src/steps/step.ts';
import { type StagedFlow, staged } from './machine.ts';

/** How a flow opens: what is fitted and what is told, each in its order. A page asks it before the rest has arrived. */
export interface Opening {
  readonly id: string;
  readonly title: string;
  readonly fitted: readonly Step[];
  readonly told: readonly Step[];
}

/** The flow as far as its opening goes: after it, it waits. */
export const openingFlow = ({ id, title, fitted, told }: Opening): StagedFlow =>
  staged(id, { title, stages: { fitted, told, look: [], measure: [] }, safe: [], causes: [], handsOver: [] });
