import type { Flow } from '../../../machines/rows.ts';
import { toText } from '../../case/case-text.ts';
import { answered, confirmed, leftAsItIs, revised } from '../../case/change.ts';
import type { Case } from '../../case/events.ts';
import { replayRows } from '../../case/replay-rows.ts';
import type { Demand, PlanRemedy } from '../../plan/verdict.ts';
import type { ConditionId } from '../../steps/conditions.ts';
import { type Stored, withStored } from '../../world/stored-profiles.ts';
import { ridden } from '../../world/symptoms/index.ts';
import { againMinutes, look, minutesNow, saysTheSame } from '../play.ts';
import { add, type ModeResult, NOTHING, type Result } from '../prove.ts';
import { answersOf } from './answers.ts';
import { type Owner, ownerOf } from './owners.ts';
import { harmsBy, selected, type Truth, truthOf } from './truth.ts';

export const PLAN_FLOW = 'is-a-reflash-needed';

export const PLAN_MODES = [
  { id: 'meter', says: 'a cheap meter, some low at 400 Hz', hasMeter: true },
  { id: 'no-meter', says: 'what is told and heard, no meter', hasMeter: false },
] as const;

/** What became of the plans: how many got an answer, and what those were worth. */
export interface PlanCounts {
  readonly answered: number;
  readonly right: number;
  /** No answer: what to find out, and what would follow. */
  readonly unknown: number;
  /** Of these, those that call no reflash most likely and name the reading that decides, and how many of them need none. */
  readonly likelyNothing: number;
  readonly likelyNothingRight: number;
  /** A visit that this bike did not need, one that it needed and that was not named, and one for the wrong thing. */
  readonly needless: number;
  readonly missed: number;
  readonly wrong: number;
  /** Of these, those that did not name what is stored here under what they hang on, with what is right for it. */
  readonly wrongWithoutUnless: number;
}

interface Played {
  readonly case: Case;
  readonly verdict: string;
  readonly remedy: PlanRemedy;
  readonly minutes: number;
  readonly asked: readonly string[];
}

const LIKELY_NOTHING = 'plan-likely-stay';

const MOST_QUESTIONS = 60;

function playPlan(flow: Flow, owner: Owner, truth: Truth, hasMeter: boolean): Played {
  const bike = ridden(withStored(owner.world, owner.stored));
  const observe = answersOf(owner, truth, hasMeter);
  let it: Case = { flow: flow.id, events: [{ type: 'rig', rig: {} }] };
  const asked: string[] = [];
  const paid = new Set<ConditionId>();
  let minutes = 0;
  while (asked.length < MOST_QUESTIONS) {
    const standing = replayRows(flow, it);
    const { open } = standing;
    if (open.kind === 'verdict') return { case: it, verdict: open.verdict.id, remedy: open.remedy, minutes, asked };
    if (open.kind !== 'step' && open.kind !== 'doubt') throw new Error(`flow ${flow.id} must ask or conclude`);
    const { step } = open;
    const answer = look(step, bike, standing, observe);
    if (open.kind === 'doubt') {
      asked.push(`again ${step.id}`);
      minutes += againMinutes(step);
      it =
        'cannot' in answer
          ? leftAsItIs(it, step.id)
          : saysTheSame(step, answer, standing)
            ? confirmed(it, step.id)
            : revised(it, step.id, answer);
    } else {
      asked.push(step.id);
      minutes += minutesNow(step, paid);
      it = answered(it, step.id, answer);
    }
  }
  throw new Error(`flow ${flow.id} must end within ${MOST_QUESTIONS} questions`);
}

const one = (is: boolean): number => (is ? 1 : 0);

const asksToMove = (demand: Demand) => demand.kind === 'select' && demand.orMove !== undefined;
/** What is stored once somebody has done what is asked. */
function after(demand: Demand, { stored, held }: Owner): Stored {
  if (demand.kind !== 'select') return stored;
  const then = selected(stored, demand.to, held);
  return then === stored && demand.orElse ? selected(stored, demand.orElse, held) : then;
}

function judge(owner: Owner, truth: Truth, { remedy, verdict, asked, minutes, case: it }: Played): ModeResult {
  const { stored, world } = owner;
  const demand = remedy.demand ?? { kind: 'find-out' };
  const fine = truth.best.includes(stored);
  const then = after(demand, owner);
  const endsWell = truth.best.includes(then);
  const isOpen = demand.kind === 'find-out';
  const ifStored = demand.kind === 'select' && demand.ifStored === true;
  // Nothing to go back to: what is left is to move the pair, which is the other half of the answer.
  const moves = asksToMove(demand) && then === stored;
  const needless = demand.kind === 'select' && fine && !ifStored;
  const missed = demand.kind === 'nothing' && !fine;
  const wrong = demand.kind === 'select' && !fine && !endsWell && !moves;
  const right = !isOpen && (endsWell || moves) && !needless;
  const proved = remedy.certainty === 'proved';
  const harms = then === stored ? [] : harmsBy(world, stored, then);
  const bad = !isOpen && !right;
  const why = needless ? 'needless visit' : missed ? 'missed visit' : wrong ? 'wrong change' : '';
  const named = remedy.unless?.find(({ profiles }) => profiles.includes(stored));
  const saidSo = named !== undefined && (truth.best.includes(after(named.demand, owner)) || asksToMove(named.demand));
  const counts: PlanCounts = {
    answered: one(!isOpen),
    right: one(right),
    unknown: one(isOpen),
    likelyNothing: one(verdict === LIKELY_NOTHING),
    likelyNothingRight: one(verdict === LIKELY_NOTHING && fine),
    needless: one(needless),
    missed: one(missed),
    wrong: one(wrong),
    wrongWithoutUnless: one(bad && !saidSo),
  };
  return {
    ...NOTHING,
    cases: 1,
    first: one(right),
    listed: one(right || (isOpen && (remedy.findings?.length ?? 0) > 0)),
    proved: one(proved && !isOpen),
    provedRight: one(proved && right),
    cured: one(!isOpen && endsWell),
    vain: one(needless || wrong),
    parts: one(needless || wrong),
    harmful: one(harms.length > 0),
    minutes,
    questions: asked.length,
    classes: {
      [world.rig.deliveredAmp === 'yes' ? 'amplifier from new' : 'no amplifier from new']: [1, one(right)],
      [owner.plan]: [1, one(right)],
    },
    plan: counts,
    failures:
      bad || isOpen || harms.length > 0
        ? [
            {
              flow: PLAN_FLOW,
              bike: owner.name,
              faults: `${stored} stored, ${truth.best.join(' or ')} fits`,
              why: [
                ...(isOpen ? [`open: ${verdict}`] : [`${why}: ${verdict}`]),
                ...harms.map((id) => `harm: ${id}`),
              ].join('; '),
              ways: [asked.join(' ')],
              case: toText(it),
            },
          ]
        : [],
  };
}

/** Plays the plans of the owners with these numbers. The same seed and numbers give the same result. */
export function provePlan(
  flow: Flow,
  {
    seed,
    bikes,
    modes,
  }: { readonly seed: number; readonly bikes: readonly number[]; readonly modes?: readonly string[] },
): Result {
  const results = new Map<string, ModeResult>();
  const wanted = PLAN_MODES.filter(({ id }) => modes?.includes(id) ?? true);
  for (const index of bikes) {
    const owner = ownerOf(seed, index);
    const { world, held, plan } = owner;
    const truth =
      world.rig.unitKind === 'replaced'
        ? { best: [owner.stored] }
        : truthOf(world, held, { sameEq: owner.sameEq || plan === 'same-eq' || plan === 'bass-gone' });
    for (const { id, hasMeter } of wanted)
      results.set(id, add(results.get(id) ?? NOTHING, judge(owner, truth, playPlan(flow, owner, truth, hasMeter))));
  }
  return Object.fromEntries(results);
}
