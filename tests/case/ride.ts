import type { Flow } from '../../machines/rows.ts';
import { answered } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { replay } from '../../src/case/replay.ts';
import type { Rig } from '../../src/rig/rig.ts';
import type { Remedy } from '../../src/verdicts/verdict.ts';
import { caseOn, remedyShown, type Short, toAnswer } from '../journey.ts';

export type Answers = Readonly<Record<string, Short>>;

export interface Ride {
  readonly verdict: string;
  readonly remedy: Remedy;
  /** The numbers of the remedy, one a line: `label: value`. */
  readonly numbers: readonly string[];
  readonly case: Case;
}

/**
 * Rides a flow to its verdict: every question must be in the list, and every answer of the list must be asked for.
 * @throws {Error} if one is missing or left over, since then the journey is not the one that the test tells.
 */
export function ride(flow: Flow, rig: Rig, answers: Answers): Ride {
  let it = caseOn(flow, rig);
  const open = new Set(Object.keys(answers));
  for (let standing = replay(flow, it); ; standing = replay(flow, it)) {
    if ('verdict' in standing.open) {
      if (open.size > 0) throw new Error(`${standing.open.verdict.id}, without being asked ${[...open].join(', ')}`);
      const { verdict } = standing.open;
      const remedy = remedyShown(flow, verdict, standing.findings);
      return {
        verdict: verdict.id,
        remedy,
        numbers: remedy.numbers.map(({ label, value }) => `${label}: ${value}`),
        case: it,
      };
    }
    const { id } = standing.open.step;
    const short = answers[id];
    if (short === undefined || !open.delete(id)) throw new Error(`no usable answer to ${id}`);
    it = answered(it, id, toAnswer(short));
  }
}
