import type { StagedFlow } from '../../machines/machine.ts';
import type { Flow } from '../../machines/rows.ts';

/** A flow by stages, or one of explicit rows. */
export type AnyFlow = StagedFlow | Flow;

export const isStaged = (flow: AnyFlow): flow is StagedFlow => flow.kind === 'staged';
