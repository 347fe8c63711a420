import { type Late, type StagedFlow, toldBy } from '../../machines/machine.ts';
import { answered, confirmed, handedOver, repaired, revised } from '../case/change.ts';
import type { Case } from '../case/events.ts';
import { replay } from '../case/replay.ts';
import type { Standing } from '../case/standing.ts';
import type { Cause } from '../causes/cause.ts';
import { effortOf } from '../causes/repair-action.ts';
import type { Certainty } from '../inference/certainty.ts';
import type { Rig } from '../rig/rig.ts';
import { type ConditionKey, conditionOf } from '../steps/conditions.ts';
import type { StepId } from '../steps/ids.ts';
import { outcomeOf, usable } from '../steps/outcome.ts';
import type { Answer, Step } from '../steps/step.ts';
import { harmsOf } from '../world/harm.ts';
import { withRepairs } from '../world/repair.ts';
import { type Ridden, ridden } from '../world/symptoms/index.ts';
import { type Lead, leadOf } from './calibration.ts';
import type { Observe } from './observe.ts';
import { withRead } from './read-off.ts';

/** A flow with what its page fetches late. */
export interface Stage {
  readonly flow: StagedFlow;
  readonly late: Late;
}
export type Stages = Readonly<Record<string, Stage>>;

/** One case: a bike, who answers for it, and what is right for it. */
export interface Ride {
  readonly stages: Stages;
  /** The flow that it starts in. */
  readonly start: string;
  readonly believed: Rig;
  readonly bike: Ridden;
  complains(bike: Ridden): boolean;
  /** The causes that stand for what this bike has, by the ids of its faults. */
  readonly right: ReadonlySet<string>;
  /** Whether the ids alone decide: with two faults mending one leaves the complaint, and some faults have no repair of their own. */
  readonly rightByIds: boolean;
  readonly observe: Observe;
  /** Nothing is broken: it is over as soon as somebody says so. */
  readonly byDesign?: true | undefined;
  /** Whether every step of a flow that makes sense is answered before anything is asked: the most that answers can tell. */
  readonly answersAll?: boolean;
}

/** One end that a flow came to, and what the rider made of it. */
export interface Round {
  readonly flow: string;
  /** The cause that the verdict names, or its list, the likeliest first. */
  readonly named: readonly string[];
  readonly certainty: Certainty;
  /** Which of them are right: their repair takes the complaint away and replaces nothing that is sound. */
  readonly right: readonly boolean[];
  /** Whether a repair was done that took nothing away, and whether it cost a part, a visit or a reflash. */
  readonly vain: boolean;
  readonly part: boolean;
  readonly harms: readonly string[];
  /** Who led, and with what share. */
  readonly lead: Lead | undefined;
  readonly way: string;
}

export interface Played {
  readonly rounds: readonly Round[];
  readonly cured: boolean;
  readonly minutes: number;
  /** Steps in the order they were asked, a second look with a mark before it. */
  readonly asked: readonly string[];
  readonly case: Case;
}

const MOST_ROUNDS = 6;
const MOST_QUESTIONS = 90;
/** How often somebody takes readings again that the flow cannot use, before it becomes "I can't". */
const TRIES = 3;
/** A second look takes less: everything stands ready. An estimate. */
const AGAIN_RATIO = 0.3;
const AGAIN_MOST_MINUTES = 1;
const COSTLY: ReadonlySet<string> = new Set(['part', 'visit', 'reflash']);

/** The minutes of a step, those of conditions that stand from a step before left out. */
export function minutesNow(step: Step, paid: Set<ConditionKey>): number {
  let { minutes } = step;
  for (const id of step.conditions ?? []) {
    if (paid.has(id)) minutes -= conditionOf(id).minutes;
    paid.add(id);
  }
  return minutes;
}
export const againMinutes = ({ minutes }: Step): number => Math.min(AGAIN_MOST_MINUTES, AGAIN_RATIO * minutes);

/** A second look is a look at the bike, not at what was answered before. */
export function look(step: Step, bike: Ridden, { rig, facts }: Standing, observe: Observe): Answer {
  const others = Object.fromEntries(Object.entries(facts).filter(([id]) => id !== step.id));
  for (let i = 0; i < TRIES; i++) {
    const answer = observe(step, bike, { rig, facts: others });
    if (usable(step, answer, { rig, facts: { ...others, [step.id]: answer } })) return answer;
  }
  return { cannot: true };
}

/** Two looks at one thing may differ in the last digit and still say the same. */
export function saysTheSame(step: Step, answer: Answer, { rig, facts, terminals }: Standing): boolean {
  const before = terminals.find((terminal) => terminal.step.id === step.id);
  return before?.outcome === outcomeOf(step, { rig, facts: { ...facts, [step.id]: answer } });
}

interface Done {
  readonly after: Ridden;
  readonly cured: boolean;
  readonly costly: boolean;
  /** Whether it exchanges something. */
  readonly part: boolean;
  readonly harms: readonly string[];
}

/** What the fix of a cause does to a bike, done by somebody who first reads off it what the fix asks him to read. */
function done({ complains }: Ride, bike: Ridden, cause: Cause, { findings }: Standing): Done {
  const { repair } = cause.remedy(withRead(findings, bike.world, cause.remedy(findings).readFirst));
  const world = withRepairs(bike.world, repair);
  const after = world === bike.world ? bike : ridden(world);
  return {
    after,
    cured: !complains(after),
    costly: COSTLY.has(effortOf(repair)),
    part: effortOf(repair) === 'part',
    harms: harmsOf(bike.world, world).map(({ id }) => `${cause.id}: ${id}`),
  };
}

/**
 * A rider buys on proof. What is only likely and costs money is checked first, and so is each entry of a list, in its
 * order. A check is harmless, made for this one question, and tells the truth.
 */
function act(
  ride: Ride,
  bike: Ridden,
  before: Case,
  named: readonly string[],
  certainty: Certainty,
  standing: Standing,
) {
  const { late } = ride.stages[before.flow] as Stage;
  let it = before;
  const right: boolean[] = [];
  let acted:
    | { it: Case; bike: Ridden; cured: boolean; vain: boolean; part: boolean; harms: readonly string[] }
    | undefined;
  for (const [i, id] of named.entries()) {
    const cause = late.causes[id];
    if (!cause) {
      right.push(false);
      continue;
    }
    const fix = done(ride, bike, cause, standing);
    const known = ride.right.has(id);
    // A part that is exchanged for nothing is never right, also where the complaint goes away with it.
    const isRight = known ? fix.cured || ride.rightByIds : fix.cured && !fix.part;
    right.push(isRight);
    if (acted) continue;
    const checked = i > 0 || certainty === 'short list' || (certainty === 'likely' && fix.costly);
    if (checked && !isRight) it = repaired(it, id, 'not-it');
    else {
      const vain = !isRight && !fix.cured;
      acted = {
        it: repaired(it, id),
        bike: fix.after,
        cured: fix.cured || (ride.byDesign === true && known),
        vain,
        part: vain && fix.costly,
        harms: fix.harms,
      };
    }
  }
  return { right, ...(acted ?? { it, bike, cured: false, vain: false, part: false, harms: [] }) };
}

/** The case with every step of its flow answered that makes sense, one after the other. */
function withAll(ride: Ride, bike: Ridden, before: Case): Case {
  const { flow } = ride.stages[before.flow] as Stage;
  let it = before;
  for (const step of flow.steps.values()) {
    // Nothing is concluded on the way, so nothing that is fetched late is needed.
    const standing = replay(flow, it);
    const asks =
      standing.findings.outcome(step.id as StepId) === undefined && step.sensible?.(standing.findings) !== false;
    if (asks) it = answered(it, step.id, look(step, bike, standing, ride.observe));
  }
  return it;
}

/** Plays a case on the shipped logic: answers, second looks, hand-overs, repairs, until it is cured or patience ends. */
export function play(ride: Ride): Played {
  let it: Case = { flow: ride.start, events: [{ type: 'rig', rig: ride.believed }] };
  let bike = ride.bike;
  const rounds: Round[] = [];
  const asked: string[] = [];
  const paid = new Set<ConditionKey>();
  let minutes = 0;
  let cured = false;
  if (ride.answersAll) it = withAll(ride, bike, it);
  while (rounds.length < MOST_ROUNDS && asked.length < MOST_QUESTIONS) {
    const { flow, late } = ride.stages[it.flow] as Stage;
    const standing = replay(flow, it, late);
    const { open } = standing;
    if (open.kind === 'step') {
      const { step } = open;
      asked.push(step.id);
      minutes += minutesNow(step, paid);
      it = answered(it, step.id, look(step, bike, standing, ride.observe));
    } else if (open.kind === 'doubt') {
      const { step } = open;
      asked.push(`again ${step.id}`);
      minutes += againMinutes(step);
      const answer = look(step, bike, standing, ride.observe);
      it = saysTheSame(step, answer, standing) ? confirmed(it, step.id) : revised(it, step.id, answer);
    } else if (open.kind === 'onward') {
      // A plan looks for no fault.
      if (!ride.stages[open.to.flow]) break;
      it = handedOver(it, standing, open.to.flow, toldBy(open.to, standing.findings));
      if (ride.answersAll) it = withAll(ride, bike, it);
    } else if (open.kind === 'cause' || open.kind === 'list') {
      const named = open.kind === 'cause' ? [open.cause, ...open.besides] : open.causes;
      const certainty = open.kind === 'cause' ? open.certainty : 'short list';
      const { right, vain, part, harms, ...acted } = act(ride, bike, it, named, certainty, standing);
      const way = standing.terminals.map(({ step, outcome }) => `${step.id}=${outcome}`).join(' ');
      const lead = leadOf(standing.decided?.reckoning?.shares ?? [], ride.right, flow.handsOver);
      rounds.push({ flow: flow.id, named, certainty, right, vain, part, harms, lead, way });
      ({ bike, cured } = acted);
      if (cured || acted.it === it) break;
      it = acted.it;
    } else break;
  }
  return { rounds, cured, minutes, asked, case: it };
}
