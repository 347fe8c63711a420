import { factsAfterRepair, withoutWhatDependedOn } from '../case/replay.ts';
import type { Rig } from '../rig/rig.ts';
import { findingsOver } from '../steps/outcome.ts';
import type { Answer, Facts, Situation, Step } from '../steps/step.ts';
import { oneEach, rank } from '../verdicts/suspects.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { type Asked, askThrough, type Concluded } from './ask.ts';
import type { Bikes, Present } from './bikes.ts';
import { type ProvedFlow, provedFlow } from './flows.ts';
import { harmOf } from './harm.ts';
import { hasFault, standsFor, tooWide } from './stands-for.ts';

/** What somebody sees and says at a bike. */
export type Observe = (step: Step, bike: Ridden, situation: Situation) => Answer;

/** The answer that the site asks to check again, given all that is known; undefined when everything fits. */
export type Advise = (flow: ProvedFlow, situation: Situation, checked: ReadonlySet<string>) => string | undefined;

export interface Ride {
  readonly proved: ProvedFlow;
  readonly bikes: Bikes;
  readonly believed: Rig;
  readonly faults: readonly Present[];
  readonly observe: Observe;
  readonly advise?: Advise;
}

/**
 * How a verdict met the bike: its own fix mends a fault that is there; a check that it lists finds one; the list of who
 * is next likeliest finds it; it hands over to another flow; or it names none of the faults that are there.
 */
export type Met = 'fix' | 'check' | 'next' | 'hand-over' | 'miss';

/** From the first question to one verdict. */
export interface Round {
  readonly flow: string;
  readonly verdict: string;
  readonly met: Met;
  readonly found: Present | undefined;
  /** Why its verdict is of no use, whatever it names: it names too much, or in words that the proof does not know. */
  readonly useless: string | null;
  readonly harms: readonly string[];
  readonly asked: readonly Asked[];
  /** Answers that the site asked to check again on the way. */
  readonly rechecked: readonly string[];
}

export interface Played {
  readonly rounds: readonly Round[];
  readonly cured: boolean;
}

/** More repairs than any owner has patience for. */
const MOST_ROUNDS = 6;
/** How many of the next likeliest the site shows when a repair did not help. */
const NEXT_SHOWN = 3;

interface Known {
  readonly rig: Rig;
  readonly facts: Facts;
}

/** Answers a flow to a verdict, and checks again what the site asks to check again. */
function askWithAdvice(
  { observe, advise }: Pick<Ride, 'observe' | 'advise'>,
  proved: ProvedFlow,
  bike: Ridden,
  known: Known,
) {
  const rechecked: string[] = [];
  const answering = (step: Step, situation: Situation) => observe(step, bike, situation);
  let facts = known.facts;
  for (;;) {
    let toCheck: string | undefined;
    const end = askThrough(proved.flow, { ...known, facts }, answering, (situation) => {
      toCheck = advise?.(proved, situation, new Set(rechecked));
      return toCheck !== undefined;
    });
    if (!('stoppedAt' in end)) return { end, rechecked };
    const step = proved.flow.steps.get(toCheck ?? '');
    if (!step) throw new Error(`advice must name a step of ${proved.id}, got ${toCheck}`);
    rechecked.push(step.id);
    // What is known from before and was not asked for yet stays known.
    const sofar = { ...facts, ...end.stoppedAt.facts };
    const answer = answering(step, { ...end.stoppedAt, facts: sofar });
    facts = { ...withoutWhatDependedOn(step.id, sofar, proved.flow.steps), [step.id]: answer };
  }
}

/** Who is next likeliest when the same verdict came up again after its repair. */
function nextLikeliest({ flow, tableFor }: ProvedFlow, end: Concluded, tried: readonly string[]): readonly string[] {
  const faultsBy = new Map(
    Object.values(flow.states).flatMap((state) =>
      'verdict' in state ? [[state.verdict.id, state.verdict.faults] as const] : [],
    ),
  );
  return oneEach(rank(tableFor(end).suspects, findingsOver(flow.steps)(end)))
    .filter(({ suspect }) => !tried.includes(suspect.verdict))
    .slice(0, NEXT_SHOWN)
    .flatMap(({ suspect }) => faultsBy.get(suspect.verdict) ?? []);
}

const named = (present: readonly Present[], ids: readonly string[]): Present | undefined =>
  present.find(({ fault }) => hasFault(ids, fault));

/** The flow that takes the case on, and what it need not ask. Not back to one that sent it here and learnt nothing. */
function goesOn(proved: ProvedFlow, { verdict, rig, facts, asked }: Concluded, handed: boolean) {
  const on = verdict.handsOver?.(findingsOver(proved.flow.steps)({ rig, facts }));
  if (!on || (handed && asked.every(({ fresh }) => !fresh))) return undefined;
  return { proved: provedFlow(on.flow), answers: on.answers };
}

/** What the page shows at the end: a list of those who are left is ranked by the table. */
const remedyOf = ({ flow, tableFor }: ProvedFlow, end: Concluded) =>
  end.verdict.remedy(findingsOver(flow.steps)(end), tableFor(end).suspects);

/** What was found of the faults that are there, and how. */
function meet(proved: ProvedFlow, end: Concluded, present: readonly Present[], repairs: readonly string[]) {
  const remedy = remedyOf(proved, end);
  const stands = standsFor(proved, end.verdict, remedy);
  const useless =
    stands.unknown.length > 0 ? `in unknown words: ${stands.unknown.join(', ')}` : tooWide(stands, remedy);
  const own = named(present, stands.own);
  if (own) return { met: 'fix', found: own, useless } as const;
  const listed = named(present, stands.listed.flat());
  if (listed) return { met: 'check', found: listed, useless } as const;
  const again = repairs.at(-1) === end.verdict.id;
  const next = again ? named(present, nextLikeliest(proved, end, repairs)) : undefined;
  return { met: next ? 'next' : 'miss', found: next, useless } as const;
}

/** Plays a case: answer, do the fix, say "still wrong" while it is, until the complaint is gone or patience ends. */
export function play(ride: Ride): Played {
  const { bikes } = ride;
  const complaint = ride.proved.id;
  const rounds: Round[] = [];
  let proved = ride.proved;
  let present = ride.faults;
  let known: Known = { rig: ride.believed, facts: {} };
  let handed = false;
  let repairs: readonly string[] = [];
  while (rounds.length < MOST_ROUNDS) {
    const bike = bikes.with(present);
    const { end, rechecked } = askWithAdvice(ride, proved, bike, known);
    const { verdict } = end;
    const remedy = remedyOf(proved, end);
    const on = goesOn(proved, end, handed);
    const { met, found, useless } = on
      ? { met: 'hand-over' as const, found: undefined, useless: null }
      : meet(proved, end, present, repairs);
    const harms = harmOf(verdict, remedy, bike.world);
    rounds.push({ flow: proved.id, verdict: verdict.id, met, found, useless, harms, asked: end.asked, rechecked });
    const facts = { ...known.facts, ...end.facts };
    if (on) {
      proved = on.proved;
      known = { rig: known.rig, facts: { ...facts, ...on.answers } };
      [handed, repairs] = [true, []];
      continue;
    }
    if (found) present = present.filter((one) => one !== found);
    if (!bikes.complains(complaint, present)) return { rounds, cured: true };
    if (met === 'miss' && repairs.at(-1) === verdict.id) break;
    repairs = [...repairs, verdict.id];
    known = {
      rig: verdict.afterwards?.(known.rig) ?? known.rig,
      facts: factsAfterRepair(verdict, facts, proved.flow.steps),
    };
  }
  return { rounds, cured: false };
}
