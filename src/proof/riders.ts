import { drawFrom } from '../observe/draw.ts';
import { observe } from '../observe/index.ts';
import { causeOfFault } from '../survey/survey-of.ts';
import { EXACT_METER } from '../world/meter.ts';
import type { Present } from './bikes.ts';
import type { Observe } from './observe.ts';
import type { Stages } from './play.ts';

/** The same step shows the same person the same, whenever it is asked and whatever was asked before. */
export const steady = (seeds: readonly (string | number)[], meter = EXACT_METER): Observe => {
  return (step, bike, situation) => observe(step, bike, situation, { meter, draw: drawFrom(...seeds, step.id) });
};

/** The causes that stand for faults, over all flows of the table. */
export const rightFor = (stages: Stages, faults: readonly Present[]): ReadonlySet<string> =>
  new Set(
    Object.values(stages).flatMap(({ late }) =>
      faults.flatMap(({ fault }) => causeOfFault(Object.values(late.causes), fault)?.id ?? []),
    ),
  );
