import type { Step } from '../src/steps/step.ts';
import { decide } from './decision.ts';
import { type Before, type FlowSpec, type StagedFlow, staged } from './machine.ts';
import type { Opening } from './opening.ts';

/** @__NO_SIDE_EFFECTS__ */
export const before = (step: Step, ...first: readonly Step[]): Before => ({
  step: step.id,
  first: first.map(({ id }) => id),
});

/** What a flow adds to its opening: what is looked at and measured, what is safe before what, and what it may end in. */
export type Plan = Pick<FlowSpec, 'safe' | 'causes' | 'handsOver'> & Pick<FlowSpec['stages'], 'look' | 'measure'>;

/** Defines a flow: how it opens, and its plan. */
export const flow = ({ id, title, fitted, told }: Opening, { look, measure, ...plan }: Plan): StagedFlow =>
  staged(id, { title, stages: { fitted, told, look, measure }, ...plan }, decide);
