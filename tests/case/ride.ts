import type { Flow } from '../../machines/rows.ts';
import { answered, confirmed, revised } from '../../src/case/change.ts';
import { replay } from '../../src/case/replay.ts';
import type { PlanRemedy } from '../../src/plan/verdict.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { type Answers, caseOn, toAnswer } from '../journey.ts';

export interface Ride {
  readonly verdict: string;
  readonly remedy: PlanRemedy;
  /** The numbers of the remedy, one a line: `label: value`. */
  readonly numbers: readonly string[];
}

/**
 * Rides a flow of explicit rows to its verdict: every question must be in the list, and every answer of the list must be
 * asked for. One that is to be given once more stands there as `again tones-off`, with other readings or as the same.
 * @throws {Error} if one is missing or left over, since then the journey is not the one that the test tells.
 */
export function ride(flow: Flow, rig: Rig, answers: Answers): Ride {
  let it = caseOn(flow, rig);
  const open = new Set(Object.keys(answers));
  for (;;) {
    const standing = replay(flow, it);
    if (standing.open.kind === 'verdict') {
      const { verdict, remedy } = standing.open;
      if (open.size > 0) throw new Error(`${verdict.id}, without being asked ${[...open].join(', ')}`);
      return { verdict: verdict.id, remedy, numbers: remedy.numbers.map(({ label, value }) => `${label}: ${value}`) };
    }
    if (standing.open.kind === 'doubt') {
      const { id } = standing.open.step;
      const again = answers[`again ${id}`];
      if (again === undefined || !open.delete(`again ${id}`)) throw new Error(`no second answer to ${id}`);
      it = again === 'same' ? confirmed(it, id) : revised(it, id, toAnswer(again));
      continue;
    }
    const id = standing.open.kind === 'step' ? standing.open.step.id : standing.state;
    const short = answers[id];
    if (short === undefined || !open.delete(id)) throw new Error(`no usable answer to ${id}`);
    it = answered(it, id, toAnswer(short));
  }
}
