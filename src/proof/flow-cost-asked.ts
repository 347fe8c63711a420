import { answered, confirmed, revised } from '../case/change.ts';
import type { Case } from '../case/events.ts';
import { replay } from '../case/replay.ts';
import type { Standing } from '../case/standing.ts';
import type { Rig } from '../rig/rig.ts';
import type { ConditionKey } from '../steps/conditions.ts';
import { outcomeOf } from '../steps/outcome.ts';
import type { Step } from '../steps/step.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import type { Observe } from './observe.ts';
import { againMinutes, look, minutesNow, type Stage, saysTheSame } from './play.ts';

/** A question of a case, what came of it, and the minutes it took. */
export interface Told {
  readonly step: Step;
  readonly outcome: string;
  readonly minutes: number;
  /** Whether it was a second look. */
  readonly again: boolean;
}

export interface Asked {
  readonly told: readonly Told[];
  readonly end: Standing;
}

/** No case is asked so much. */
const MOST_QUESTIONS = 90;

/** What one flow asks of a bike until its first end: a cause, a list, or a hand-over. Nothing is repaired. */
export function askThrough({ flow, late }: Stage, believed: Rig, bike: Ridden, observe: Observe): Asked {
  let it: Case = { flow: flow.id, events: [{ type: 'rig', rig: believed }] };
  const told: Told[] = [];
  const paid = new Set<ConditionKey>();
  while (told.length < MOST_QUESTIONS) {
    const standing = replay(flow, it, late);
    const { open } = standing;
    if (open.kind !== 'step' && open.kind !== 'doubt') return { told, end: standing };
    const { step } = open;
    const again = open.kind === 'doubt';
    const answer = look(step, bike, standing, observe);
    const outcome = outcomeOf(step, { rig: standing.rig, facts: { ...standing.facts, [step.id]: answer } }) ?? 'cannot';
    told.push({ step, outcome, minutes: again ? againMinutes(step) : minutesNow(step, paid), again });
    it = !again
      ? answered(it, step.id, answer)
      : saysTheSame(step, answer, standing)
        ? confirmed(it, step.id)
        : revised(it, step.id, answer);
  }
  throw new Error(`${flow.id} asks more than ${MOST_QUESTIONS} questions`);
}
