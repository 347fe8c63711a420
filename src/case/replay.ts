import type { Late } from '../../machines/machine.ts';
import { type AnyFlow, isStaged } from './any-flow.ts';
import type { Case } from './events.ts';
import { replayRows } from './replay-rows.ts';
import { replayStaged } from './replay-staged.ts';
import type { Standing } from './standing.ts';

export { type AnyFlow, isStaged };

/** Replays the events of a case: where it stands, and what led there. Pure: the same case gives the same standing. */
export const replay = (flow: AnyFlow, it: Case, late?: Late): Standing =>
  isStaged(flow) ? replayStaged(flow, it, late) : replayRows(flow, it);
