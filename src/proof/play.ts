import type { Late } from '../../machines/kit.ts';
import { elsewhere, type StagedFlow } from '../../machines/kit.ts';
import { answered, confirmed, handedOver, repaired, revised } from '../case/change.ts';
import type { Case } from '../case/events.ts';
import { replay } from '../case/replay.ts';
import type { Standing } from '../case/standing.ts';
import type { Cause } from '../causes/cause.ts';
import { effortOf, type RepairAction } from '../causes/repair-action.ts';
import type { Certainty } from '../inference/certainty.ts';
import type { Rig } from '../rig/rig.ts';
import { CONDITIONS, type ConditionId } from '../steps/conditions.ts';
import { usable } from '../steps/outcome.ts';
import type { Answer, Step } from '../steps/step.ts';
import { harms } from '../world/harm.ts';
import { withRepairs } from '../world/repair.ts';
import { type Ridden, ridden } from '../world/symptoms/index.ts';
import type { Observe } from './observe.ts';

/** A flow with what its page fetches late, by id. */
export interface Played {
  readonly rounds: readonly Round[];
  readonly cured: boolean;
  readonly questions: number;
  readonly minutes: number;
  /** Steps that were asked, in order, the second time with a mark before it. */
  readonly asked: readonly string[];
  readonly case: Case;
}

/** One end that a flow came to, and what was made of it. */
export interface Round {
  readonly flow: string;
  /** The cause that the verdict names, or its list, the likeliest first. */
  readonly named: readonly string[];
  readonly certainty: Certainty;
  /** Whether a repair was done that took nothing away. */
  readonly vain: boolean;
  /** Whether a part was bought, or a visit or a reflash paid, for nothing. */
  readonly part: boolean;
  readonly harms: readonly string[];
  readonly way: string;
}

export interface Stage {
  readonly flow: StagedFlow;
  readonly late: Late;
}

export interface Ride {
  readonly stages: Readonly<Record<string, Stage>>;
  /** The flow that it starts in. */
  readonly start: string;
  readonly believed: Rig;
  readonly bike: Ridden;
  readonly complains: (bike: Ridden) => boolean;
  /** The causes whose repair is right for what this bike has. */
  readonly right: ReadonlySet<string>;
  readonly observe: Observe;
}

const MOST_ROUNDS = 6;
const MOST_QUESTIONS = 90;
/** How often somebody takes readings again that the flow cannot use, before it becomes "I can't". */
const TRIES = 3;
/** A second look takes less: everything stands ready. An estimate. */
const AGAIN_RATIO = 0.3;
const AGAIN_MOST_MINUTES = 1;
const COSTLY = new Set(['part', 'visit', 'reflash']);

function usableAnswer(
  step: Step,
  bike: Ridden,
  { rig, facts }: Pick<Standing, 'rig' | 'facts'>,
  observe: Observe,
): Answer {
  const others = Object.fromEntries(Object.entries(facts).filter(([id]) => id !== step.id));
  for (let i = 0; i < TRIES; i++) {
    const answer = observe(step, bike, { rig, facts: others });
    if (usable(step, answer, { rig, facts: { ...others, [step.id]: answer } })) return answer;
  }
  return { cannot: true };
}

const same = (a: Answer, b: Answer | undefined): boolean => JSON.stringify(a) === JSON.stringify(b);
/** Two looks at one thing may differ in the last digit and still say the same. */
const saysTheSame = (step: Step, a: Answer, standing: Standing): boolean => {
  const before = standing.terminals.find((terminal) => terminal.step.id === step.id);
  if (!before || same(a, before.answer)) return true;
  const facts = { ...standing.facts, [step.id]: a };
  return outcomeNow(step, { rig: standing.rig, facts }) === before.outcome;
};

import { outcomeOf } from '../steps/outcome.ts';

const outcomeNow = (step: Step, situation: { readonly rig: Rig; readonly facts: Standing['facts'] }) =>
  outcomeOf(step, situation);

const wayOf = (standing: Standing): string =>
  standing.terminals.map(({ step, outcome }) => `${step.id}=${outcome}`).join(' ');

/** What a rider does with what he is told, and what becomes of the bike. */
interface Acted {
  readonly bike: Ridden;
  readonly it: Case;
  readonly cured: boolean;
  readonly vain: boolean;
  readonly part: boolean;
  readonly harms: readonly string[];
}

function doRepair(ride: Ride, bike: Ridden, actions: readonly RepairAction[]) {
  const world = withRepairs(bike.world, actions);
  const after = world === bike.world ? bike : ridden(world);
  return { after, cured: !ride.complains(after), harms: harms(bike.world, world) };
}

/** Does the fix of a cause and looks: it is gone, or it is still wrong. */
function repair(ride: Ride, bike: Ridden, it: Case, cause: Cause, standing: Standing): Acted {
  const actions = cause.remedy(standing.findings).repair;
  const done = doRepair(ride, bike, actions);
  const vain = !done.cured && !ride.right.has(cause.id);
  return {
    bike: done.after,
    it: repaired(it, cause.id),
    cured: done.cured,
    vain,
    part: vain && COSTLY.has(effortOf(actions)),
    harms: done.harms,
  };
}

/**
 * A rider buys on proof; what is only likely and costs money is checked first, and so is each entry of a list, in its
 * order. A check tells the truth: it is harmless, and made for this one question.
 */
function act(
  ride: Ride,
  bike: Ridden,
  it: Case,
  named: readonly string[],
  certainty: Certainty,
  standing: Standing,
): Acted {
  const { late } = ride.stages[it.flow] as Stage;
  let now = it;
  for (const id of named) {
    const cause = late.causes[id];
    if (!cause) continue;
    const costly = COSTLY.has(effortOf(cause.remedy(standing.findings).repair));
    const checked = certainty === 'short list' || (certainty === 'likely' && costly);
    if (checked && !ride.right.has(id)) {
      now = repaired(now, id, 'not-it');
      continue;
    }
    return repair(ride, bike, now, cause, standing);
  }
  return { bike, it: now, cured: false, vain: false, part: false, harms: [] };
}

/** Plays a case on the shipped logic: answers, second looks, hand-overs, repairs, until it is cured or patience ends. */
export function play(ride: Ride): Played {
  let it: Case = { flow: ride.start, events: [{ type: 'rig', rig: ride.believed }] };
  let bike = ride.bike;
  const rounds: Round[] = [];
  const asked: string[] = [];
  const paid = new Set<ConditionId>();
  let minutes = 0;
  let cured = false;
  const pay = (step: Step) => {
    minutes += step.minutes;
    for (const id of step.conditions ?? []) {
      if (paid.has(id)) minutes -= CONDITIONS[id].minutes;
      paid.add(id);
    }
  };
  while (rounds.length < MOST_ROUNDS && asked.length < MOST_QUESTIONS) {
    const { flow, late } = ride.stages[it.flow] as Stage;
    const standing = replay(flow, it, late);
    const { open } = standing;
    if (open.kind === 'step') {
      asked.push(open.step.id);
      pay(open.step);
      it = answered(it, open.step.id, usableAnswer(open.step, bike, standing, ride.observe));
    } else if (open.kind === 'doubt') {
      asked.push(`again ${open.step.id}`);
      minutes += Math.min(AGAIN_MOST_MINUTES, AGAIN_RATIO * open.step.minutes);
      const answer = usableAnswer(open.step, bike, standing, ride.observe);
      it = saysTheSame(open.step, answer, standing) ? confirmed(it, open.step.id) : revised(it, open.step.id, answer);
    } else if (open.kind === 'onward') {
      it = handedOver(it, standing, open.to.flow, open.to.told);
    } else if (open.kind === 'cause' || open.kind === 'list') {
      const named = open.kind === 'cause' ? [open.cause] : open.causes;
      const certainty = open.kind === 'cause' ? open.certainty : 'short list';
      const acted = act(ride, bike, it, named, certainty, standing);
      const { vain, part } = acted;
      rounds.push({ flow: flow.id, named, certainty, vain, part, harms: acted.harms, way: wayOf(standing) });
      [bike, cured] = [acted.bike, acted.cured];
      if (cured || acted.it === it) break;
      it = acted.it;
    } else break;
  }
  return { rounds, cured, questions: asked.length, minutes, asked, case: it };
}

export { elsewhere };
