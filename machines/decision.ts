import { type Cause, titleOf } from '../src/causes/cause.ts';
import { effortOf } from '../src/causes/repair-action.ts';
import { onceEach } from '../src/compute/once-each.ts';
import { type Certainty, certaintyOf, type Judged, oddFor, wouldProve } from '../src/inference/certainty.ts';
import { type Doubt, doubts } from '../src/inference/doubt.ts';
import { type Next, nextSteps, type Offer } from '../src/inference/next.ts';
import { type BothOf, pairsShare, reckoned } from '../src/inference/pairs.ts';
import {
  type Knowledge,
  likeliestOutcome,
  type Observation,
  type Posterior,
  posterior,
  ranked,
  type Share,
} from '../src/inference/posterior.ts';
import { compile, isUnthought, type Model } from '../src/inference/table.ts';
import { type ConditionKey, conditionOf, nameOf } from '../src/steps/conditions.ts';
import type { StepId } from '../src/steps/ids.ts';
import { type Findings, findingsFrom, outcomeNamed } from '../src/steps/outcome.ts';
import type { Step } from '../src/steps/step.ts';
import { lookedAtWhilePlaying } from '../src/steps/told/comes-and-goes.ts';
import { toolsAtHand } from '../src/steps/tools/tools-at-hand.ts';
import { deniedIn } from './denied.ts';
import { elsewhere } from './elsewhere.ts';
import { type FlowContext, type HandsOver, type StagedFlow, sendsOn } from './machine.ts';
import { canBeAsked, hasNoMeter } from './sense.ts';

/** Why an answer is given once more: for what the inference makes of it, or because another says that its part is not there. */
export type WhyAgain = Doubt['because'] | { readonly deniedBy: Step };

/** What a flow does next, and why. */
export type Decision =
  | { readonly kind: 'ask'; readonly step: Step }
  /** An answer is given once more before anything is concluded. */
  | { readonly kind: 'confirm'; readonly step: Step; readonly because: WhyAgain }
  /** A cause, and what else it may be: the next likeliest, each with a check of its own. */
  | {
      readonly kind: 'conclude';
      readonly cause: string;
      readonly certainty: Certainty;
      readonly besides: readonly string[];
    }
  | { readonly kind: 'list'; readonly causes: readonly string[] }
  /** Where it goes on, and the answers that what is looked for there hardly explains. */
  | { readonly kind: 'hand over'; readonly to: HandsOver; readonly odd?: readonly string[] }
  /** What the page fetches late is not here yet. */
  | { readonly kind: 'wait' };

/** Everything that was reckoned on the way to a decision: what the page shows, and the proof counts. */
export interface Reckoning {
  readonly model: Model;
  readonly known: Knowledge;
  readonly believed: Posterior;
  /** All causes, the likeliest first. */
  readonly shares: readonly Share[];
  readonly certainty: Certainty;
  /** Steps that could be asked now, the best first. */
  readonly next: readonly Next[];
  /** Without a meter: what whoever has one should measure first. */
  readonly measureFirst: readonly string[];
}

export interface Decided {
  readonly decision: Decision;
  readonly reckoning?: Reckoning;
}

/** States that any reading is taken in: they are not what makes two readings fail together. */
const ORDINARY: ReadonlySet<string> = new Set([
  'key-off',
  'minus-off',
  'head-unit-playing',
  'music-paused',
  'volume-zero',
  'amp-uncovered',
]);
/** Whether an ear only describes what there is, with nothing done meanwhile that it could compare. */
const isDescribed = (step: Step): boolean => step.tool === 'ears' && !(step.kind === 'choice' && step.compares);
/** What fails together: readings on one range with the same plugs apart, and whatever one ear describes. */
function groupOf(step: Step): string {
  const { id, tool, conditions = [] } = step;
  if (isDescribed(step)) return 'ears';
  return tool === 'meter' ? conditions.filter((one) => !ORDINARY.has(nameOf(one))).join(' ') : id;
}

/** Whether a step that was answered took the same reading once more, under the same condition. */
const isReadAgain = (flow: StagedFlow, f: Findings, step: Step): boolean =>
  step.kind === 'reading' &&
  flow.asked.some(
    (other) =>
      f.facts[other.id] !== undefined &&
      (other.givenUnder as readonly string[] | undefined)?.includes(step.id) === true &&
      groupOf(other) === groupOf(step),
  );

const wasPutRight = (step: Step | undefined, outcome: string): boolean =>
  step?.kind === 'choice' && step.putRight?.includes(outcome) === true;

/** How a bike is built is known from “my bike”, asked for, or seen where the part would be. */
const saysTheBuild = (step: Step, outcome: string): boolean =>
  step.kind === 'rig' || (step.kind === 'choice' && step.notFitted?.includes(outcome) === true);

/** What cannot, or must not, be looked at once more stands as it was given. */
const isFinal = (step: Step, outcome: string): boolean =>
  wasPutRight(step, outcome) || (step.kind === 'choice' && step.neverAgain?.includes(outcome) === true);

/** Whether another that was answered would make no sense without its answer: it only led to that one. */
function ledOn(flow: StagedFlow, f: Findings, step: Step): boolean {
  const outcome = (id: string) => (id === step.id ? undefined : outcomeNamed(f, id));
  const without: Findings = { ...f, outcome: outcome as Findings['outcome'] };
  return flow.asked.some(
    (other) => f.facts[other.id] !== undefined && other.sensible?.(f) === true && !other.sensible(without),
  );
}

/** What is known of the steps of a flow, in the form that the inference takes it. */
export function observationsOf(flow: StagedFlow, f: Findings, confirmed: ReadonlySet<string>): readonly Observation[] {
  const knowsAnother = (f.rig.amps?.length ?? 0) > 1;
  return [...flow.steps.values()].flatMap((step): Observation[] => {
    const outcome = outcomeNamed(f, step.id);
    if (outcome === undefined || outcome === 'cannot') return [];
    // “My bike” knows it of both amplifiers: that of the other one says nothing of the one that is meant.
    if (knowsAnother && step.kind === 'rig' && step.sensible?.(f) === false) return [];
    const isJustNow = step.kind === 'choice' && step.justNow?.includes(outcome) && lookedAtWhilePlaying(f);
    const rightBefore = isJustNow ? step.rightBefore?.[outcome] : undefined;
    if (isJustNow && rightBefore === undefined) return [];
    return [
      {
        step: step.id,
        outcome: rightBefore ?? outcome,
        group: groupOf(step),
        ledOn: ledOn(flow, f, step),
        particular: isLook(step) && !isDescribed(step) && step.tool !== 'meter',
        trust: saysTheBuild(step, outcome) ? 'build' : flow.told.has(step.id) ? 'told' : 'seen',
        confirmed: confirmed.has(step.id) || isFinal(step, outcome) || isReadAgain(flow, f, step),
      },
    ];
  });
}

/** What the steps of a flow show where two things are wrong, of those that say so. */
export const bothOf =
  (flow: StagedFlow): BothOf =>
  (id) =>
    flow.steps.get(id)?.both;

/** Minutes of a step on top of what stands ready from the steps before it. */
function minutesNow(step: Step, ready: ReadonlySet<ConditionKey>): number {
  const paid = (step.conditions ?? []).reduce((sum, id) => (ready.has(id) ? sum + conditionOf(id).minutes : sum), 0);
  return Math.max(0, step.minutes - paid);
}

/** Conditions that were set up for steps that are answered: they are paid once. */
const readyConditions = (flow: StagedFlow, f: Findings): ReadonlySet<ConditionKey> =>
  new Set(
    [...flow.steps.values()].flatMap((step) => {
      const outcome = f.facts[step.id] ? outcomeNamed(f, step.id) : undefined;
      return outcome === undefined || outcome === 'cannot' ? [] : (step.conditions ?? []);
    }),
  );

const MOST_TO_MEASURE = 3;
/** The readings that would tell most, for somebody who has no meter to pass on. */
function measuredFirst(flow: StagedFlow, f: Findings, model: Model, believed: Posterior): readonly string[] {
  if (!hasNoMeter(f)) return [];
  const readings = flow.asked.filter(
    (step) => step.tool === 'meter' && step.kind === 'reading' && (step.sensible?.(f) ?? true),
  );
  const offers = readings.map(({ id, minutes, place }) => ({ step: id, minutes, place }));
  return nextSteps(model, believed, offers)
    .filter(({ bits }) => bits > LEAST_BITS)
    .slice(0, MOST_TO_MEASURE)
    .map(({ step }) => step);
}

/** Findings in which some steps came out as they most likely will. */
const supposing = (f: Findings, supposed: ReadonlyMap<string, string>): Findings =>
  findingsFrom(
    f,
    (id) => outcomeNamed(f, id) ?? supposed.get(id),
    (id) => f.values(id as StepId),
  );

/**
 * What may be asked now: what makes sense, with what has to come first done. What waits for others, and would make sense
 * once they came out as they most likely will, is credited to them.
 */
export function offersOf(
  flow: StagedFlow,
  f: Findings,
  likeliest: (step: Step) => string | undefined,
): readonly Offer[] {
  const ready = readyConditions(flow, f);
  const open = new Map(flow.asked.filter((step) => canBeAsked(step, f)).map((step) => [step.id, step]));
  const minutesOf = (id: string) => {
    const step = flow.steps.get(id);
    return step ? minutesNow(step, ready) : 0;
  };
  const isWanted = (id: string) => {
    const step = flow.steps.get(id);
    return step !== undefined && outcomeNamed(f, id) === undefined && !(step.tool === 'meter' && hasNoMeter(f));
  };
  /** Everything that has to be asked before a step, however far back, the first of them first. */
  const allBefore = (id: string, found: readonly string[] = []): readonly string[] =>
    flow.before(id).reduce<readonly string[]>((so, first) => {
      if (so.includes(first) || !isWanted(first)) return so;
      return [...allBefore(first, so), first];
    }, found);
  const opens = new Map<string, { step: string; minutes: number }[]>();
  for (const step of flow.asked) {
    if (!isWanted(step.id)) continue;
    const first = allBefore(step.id);
    if (first.length === 0) continue;
    const supposed = new Map<string, string>();
    // What makes no sense on this bike is not waited for. What hangs on its outcome makes none without it either.
    const needed = first.filter((id) => {
      const one = flow.steps.get(id) as Step;
      if (one.sensible?.(supposing(f, supposed)) === false) return false;
      const outcome = likeliest(one);
      if (outcome !== undefined) supposed.set(id, outcome);
      return true;
    });
    if (step.sensible?.(supposing(f, supposed)) === false) continue;
    const total = [...needed, step.id].reduce((sum, id) => sum + minutesOf(id), 0);
    for (const id of needed)
      if (open.has(id)) opens.set(id, [...(opens.get(id) ?? []), { step: step.id, minutes: total - minutesOf(id) }]);
  }
  return [...open.values()]
    .filter(({ id }) => !flow.before(id).some((first) => open.has(first)))
    .map(({ id, place }) => ({ step: id, minutes: minutesOf(id), place, opens: opens.get(id) ?? [] }));
}

/** What a bit is worth, in minutes of asking: the dearer the fix, the surer one wants to be. Judged, tuned in the proof. */
const MINUTES_PER_BIT = { hands: 32, 'small part': 48, visit: 80, part: 80, reflash: 80 } as const;
/** What nobody pays for on the word of one witness. */
const DEAR: ReadonlySet<string> = new Set(['part', 'visit', 'reflash']);
const UNKNOWN_MINUTES_PER_BIT = 48;
/** So little is no reason to ask: it is what slips leave. */
const LEAST_BITS = 0.01;
/** Answers that are given once more in one round, at most. */
const MOST_CONFIRMED = 2;
const MOST_LISTED = 4;
/**
 * A cause that has less than this of what is left to those with a name is not worth a line in a list, nor beside one that
 * is likely: so much is left by a bike or a person outside of all habits. Judged in the proof.
 */
const LISTED_SHARE = 0.002;

/** What its fix costs on this bike: a wire here, a visit there. */
const effort = (cause: Cause, f: Findings): keyof typeof MINUTES_PER_BIT => effortOf(cause.remedy(f).repair);

const lastPlace = (flow: StagedFlow, { facts }: FlowContext): string | undefined =>
  Object.keys(facts)
    .map((id) => flow.steps.get(id))
    .findLast((step) => step !== undefined && flow.asked.includes(step))?.place;

/** The flow that a case came from last, of those that may take it back and did not say that it is none of theirs. */
function cameFrom(
  flow: StagedFlow,
  { mayHandOver = true, cameBy = [], repairs = [] }: FlowContext,
  because: string,
): HandsOver | undefined {
  if (!mayHandOver) return undefined;
  const isNot = (id: string) => repairs.some(({ cause }) => cause === elsewhere(id));
  const to = cameBy
    .filter((id) => !isNot(id))
    .map((id) => flow.handsOver.find((one) => one.flow === id))
    .find((one) => one !== undefined);
  return to && { flow: to.flow, title: to.title, because, causes: to.causes, goesBack: true };
}

const NOT_HERE = 'It is none of what is looked for here. It goes on where it began, with that in mind.';
/** The flow whose complaint it is after all, or the answer that says so and is given once more before that. */
function anotherComplaint(flow: StagedFlow, context: FlowContext, f: Findings): Decision | undefined {
  const { mayHandOver = true, confirmed = [], left = [], repairs = [] } = context;
  // Whoever said that it is not that has looked.
  const isNot = (flowId: string) => repairs.some(({ cause }) => cause === elsewhere(flowId));
  const to = mayHandOver ? flow.handsOver.find(({ flow: other, isIt }) => isIt?.when(f) && !isNot(other)) : undefined;
  if (!to) return undefined;
  const isOpen = (id: string) => f.facts[id] !== undefined && !confirmed.includes(id) && !left.includes(id);
  const open = to.isIt?.by.find(({ id }) => isOpen(id));
  if (open) return { kind: 'confirm', step: open, because: 'pivotal' };
  const back = to.isIt?.orBack ? cameFrom(flow, context, NOT_HERE) : undefined;
  return { kind: 'hand over', to: back ?? to };
}

/** The causes of another flow lead this one's by so much that a list of these would be of no use. Judged. */
const FAR_AHEAD = 3;
/** And they are so near to what nobody thought of. Judged. */
const NEAR_SHARE = 0.5;
/**
 * Who leads. Whatever nobody thought of is looked for nowhere: where the next one is another flow's, near to it and far
 * ahead of all that this one has, it goes on there.
 */
function leadOf(flow: StagedFlow, f: Findings, shares: readonly Share[]): Share | undefined {
  if (sendsOn(flow)) return shares.find(({ cause }) => lookedForBy(flow, f, cause) !== undefined);
  const [first] = shares;
  const named = shares.find(({ cause }) => !isUnthought(cause));
  const own = shares.find(({ cause }) => flow.causes.includes(cause));
  const isNear = (named?.shareRatio ?? 0) >= NEAR_SHARE * (first?.shareRatio ?? 0);
  const isFarAhead = named !== own && (named?.shareRatio ?? 0) >= FAR_AHEAD * (own?.shareRatio ?? 0);
  return isNear && isFarAhead ? named : first;
}

/** A cause whose share falls to so little of what it is on any bike is none of this one. Judged: what is said is wrong in 0.03. */
const OF_BIKE_RATIO = 0.1;
type Reckoned = Pick<Reckoning, 'model' | 'known' | 'shares'>;
/** Whether a cause keeps enough of its share with what these answers say. */
function keepsItsShare(
  { model, known }: Pick<Reckoning, 'model' | 'known'>,
  isSaid: (observation: Observation) => boolean,
): (cause: string) => boolean {
  const shareWith = (observations: readonly Observation[]) =>
    new Map(
      ranked(model, posterior(model, { observations, repairs: [] })).map((one) => [one.cause, one.shareRatio] as const),
    );
  const [any, said] = [shareWith([]), shareWith(known.observations.filter(isSaid))];
  return (cause) => (said.get(cause) ?? 0) >= OF_BIKE_RATIO * (any.get(cause) ?? 0);
}
/** So much is left to a cause against what was said of the place only by what was seen. Judged. */
const SEEN_SHARE = 0.1;
/** Whether a bike can have a cause, as it was said to be built. */
export const canBeBuilt = (reckoned: Pick<Reckoning, 'model' | 'known'>) =>
  keepsItsShare(reckoned, ({ trust }) => trust === 'build');
/**
 * The same, and where it was said to be wrong: nobody is sent to an amplifier that he said is not there, nor to a lid for a
 * speaker in the fairing. Unless what was seen since speaks for it all the same: with two at once, a whole side is silent
 * and each of them is in one place.
 */
function canBeOn(flow: StagedFlow, reckoned: Reckoned): (cause: string) => boolean {
  const fitted = new Set(flow.spec.stages.fitted.map(({ id }) => id));
  const [built, said] = [
    canBeBuilt(reckoned),
    keepsItsShare(reckoned, ({ step, trust }) => trust === 'build' || fitted.has(step)),
  ];
  const seen = new Set(reckoned.shares.filter(({ shareRatio }) => shareRatio >= SEEN_SHARE).map((one) => one.cause));
  return (cause) => said(cause) || (seen.has(cause) && built(cause));
}

/** Beside what is proved only what is not next to impossible is named. */
const BESIDES_PROVED_SHARE = 0.02;
/** What is named beside a cause: three others at most. */
const MOST_BESIDES = 3;
function besidesOf(
  flow: StagedFlow,
  f: Findings,
  reckoned: Reckoned & Pick<Reckoning, 'certainty'>,
  cause: string,
): readonly string[] {
  const least = reckoned.certainty === 'proved' ? BESIDES_PROVED_SHARE : LISTED_SHARE;
  const isOfBike = canBeOn(flow, reckoned);
  return reckoned.shares
    .filter((one) => one.cause !== cause && !isUnthought(one.cause) && one.shareRatio >= least)
    .filter((one) => flow.causes.includes(one.cause) || lookedForBy(flow, f, one.cause) !== undefined)
    .filter((one) => isOfBike(one.cause))
    .slice(0, MOST_BESIDES)
    .map((one) => one.cause);
}

/** The flow that looks for a cause which is none of this one's, where this bike has anything to look for there. */
const lookedForBy = (flow: StagedFlow, f: Findings, cause: string | undefined): HandsOver | undefined =>
  flow.handsOver.find((to) => elsewhere(to.flow) === cause && (to.sensible?.(f) ?? true));
const flowOf = (flow: StagedFlow, { mayHandOver = true }: FlowContext, f: Findings, cause: string | undefined) =>
  mayHandOver ? lookedForBy(flow, f, cause) : undefined;

/** Whatever nobody thought of leads, and nothing of this flow's own comes near: what is left after one repair may be its own. */
function isLostHere(flow: StagedFlow, shares: readonly Share[]): boolean {
  const [first] = shares;
  const own = shares.find(({ cause }) => flow.causes.includes(cause));
  return isUnthought(first?.cause ?? '') && (own?.shareRatio ?? 0) < NEAR_SHARE * (first?.shareRatio ?? 0);
}

const GOES_BACK = 'Nothing that is looked for here fits what was seen. It goes on where it began, with that in mind.';
/** The flow that a case came from, where this one has come to the end of what it knows: there it may be another thing. */
function backTo(flow: StagedFlow, context: FlowContext): HandsOver | undefined {
  // What it thinks of first is named before.
  const hasTried = (context.repairs ?? []).some(({ cause }) => flow.causes.includes(cause));
  return hasTried ? cameFrom(flow, context, GOES_BACK) : undefined;
}

function conclusion(
  flow: StagedFlow,
  context: FlowContext,
  f: Findings,
  reckoned: Reckoned & Pick<Reckoning, 'certainty' | 'believed'>,
): Decision {
  const { model, known, believed, shares, certainty } = reckoned;
  const first = leadOf(flow, f, shares);
  // The other flow has the steps for it, and hands back what is not its own.
  const to = flowOf(flow, context, f, first?.cause);
  if (to) return { kind: 'hand over', to, odd: oddFor(model, known, believed, elsewhere(to.flow)) };
  // Two at once may be in two places, and neither of them is what is not fitted.
  const isNamed = first && flow.causes.includes(first.cause) && certainty !== 'short list';
  if (isNamed && canBeBuilt(reckoned)(first.cause))
    return { kind: 'conclude', cause: first.cause, certainty, besides: besidesOf(flow, f, reckoned, first.cause) };
  const back = isLostHere(flow, shares) ? backTo(flow, context) : undefined;
  if (back) return { kind: 'hand over', to: back };
  // A list is never empty: where all that is likely is nobody's here, it says who of its own comes next.
  const all = shares.filter(({ cause }) => flow.causes.includes(cause));
  const isOfBike = canBeOn(flow, reckoned);
  const onBike = all.filter(({ cause }) => isOfBike(cause));
  const own = onBike.length > 0 ? onBike : all;
  const total = own.reduce((sum, { shareRatio }) => sum + shareRatio, 0);
  const listed = own.filter(({ shareRatio }, i) => i === 0 || shareRatio >= LISTED_SHARE * total);
  return { kind: 'list', causes: listed.slice(0, MOST_LISTED).map(({ cause }) => cause) };
}

/** So sure that it is another flow's, its own steps are the shorter way. */
const SURELY_SHARE = 0.8;
const surelyElsewhere = (flow: StagedFlow, context: FlowContext, f: Findings, [first]: readonly Share[]): boolean =>
  first !== undefined && first.shareRatio >= SURELY_SHARE && flowOf(flow, context, f, first.cause) !== undefined;

/** So little is spent on a step that only earns the word “proved”, and so much where the fix is dear. */
const EARN_MINUTES = 2;
const EARN_DEAR_MINUTES = 8;
const EARN_SHARE = 0.9;
/** A step that would prove the cause which leads, where it is sure enough and the step costs next to nothing. */
function earning(
  flow: StagedFlow,
  { model, known, believed, shares: [first], certainty, next }: Reckoning,
  offers: readonly Offer[],
  isDear: boolean,
  judged: Omit<Judged, 'hangsOnOne'>,
) {
  if (certainty === 'proved' || !first || isUnthought(first.cause) || first.shareRatio < EARN_SHARE) return undefined;
  const mostMinutes = isDear ? EARN_DEAR_MINUTES : EARN_MINUTES;
  const cheap = offers
    .filter(({ minutes }) => minutes <= mostMinutes)
    .map(({ step }) => ({ step, group: groupOf(flow.steps.get(step) as Step) }));
  const proving = wouldProve(model, known, believed, first.cause, cheap, judged);
  return next.find(({ step }) => proving.includes(step))?.step;
}

/** Whether something is done at the bike for a step: what needs neither tool nor ear nor hand is told from memory. */
const isLook = (step: Step | undefined): boolean =>
  step !== undefined && step.kind !== 'rig' && (step.tool !== 'none' || (step.conditions ?? []).length > 0);
const isLookedAt = (step: Step, f: Findings): boolean => {
  const outcome = outcomeNamed(f, step.id);
  return isLook(step) && outcome !== undefined && outcome !== 'cannot';
};

/** Whoever has no name for what is wrong is asked so often before he is sent on, whether for the first time or again. */
const MOST_BEFORE_SENDING_ON = 3;
const mayAskMore = (flow: StagedFlow, { facts, askedAgain = 0 }: FlowContext): boolean =>
  !sendsOn(flow) || Object.keys(facts).filter((id) => flow.steps.has(id)).length + askedAgain < MOST_BEFORE_SENDING_ON;

const untold = ({ observations, repairs }: Knowledge): Knowledge => ({
  observations: observations.filter(({ trust }) => trust === 'build'),
  repairs,
});

/** A cure is proof once it was undone and done again. */
const notYetUndone = ({ step, confirmed }: Observation): readonly Doubt[] =>
  confirmed ? [] : [{ step, because: 'pivotal' }];

/**
 * Two causes at once explain what one does not. Before any repair that is a reason to look once more at the answer that
 * does not fit the likeliest single one: a slip is commoner than a second fault.
 */
const oddByItself = (single: Model, model: Model, known: Knowledge): readonly Doubt[] =>
  model === single || known.repairs.length > 0
    ? []
    : doubts(single, known, posterior(single, known)).filter(({ because }) => because === 'misfit');

/** So likely to be two at once, no single cause is proved. Judged. */
const TWO_AT_ONCE_SHARE = 0.05;

/** What comes next once everything in order is answered, decided once from everything that is known. */
export function decide(flow: StagedFlow, context: FlowContext, f: Findings): Decided {
  const { late } = context;
  if (!late) return { decision: { kind: 'wait' } };
  const confirmed = new Set(context.confirmed ?? []);
  const known: Knowledge = { observations: observationsOf(flow, f, confirmed), repairs: context.repairs ?? [] };
  const single = compile(late.table);
  const { model, believed } = reckoned(single, known, bothOf(flow));
  const shares = ranked(model, believed);
  const likeliest = onceEach((one: Step) => likeliestOutcome(model, believed, one.id));
  const offers = offersOf(flow, f, likeliest);
  const next = nextSteps(model, believed, offers, lastPlace(flow, context));
  // What brought the sound back ends the search, but for a look at what it was done to. What was seen before that cannot
  // be seen again.
  const cured = known.observations.find(
    ({ step: id, outcome }) => outcome === 'cured' || wasPutRight(flow.steps.get(id), outcome),
  );
  const doubted = cured
    ? notYetUndone(cured)
    : [...doubts(model, known, believed), ...oddByItself(single, model, known)];
  const leader = late.causes[shares[0]?.cause ?? ''];
  const fix = leader && effort(leader, f);
  const isDear = fix !== undefined && DEAR.has(fix);
  const judged = {
    // Where it may as well be two at once, none is proved. Once one was mended, the other may be.
    unexplained:
      (pairsShare(single, believed) > TWO_AT_ONCE_SHARE && known.repairs.every(({ result }) => result !== 'better')) ||
      // Nor where another flow saw something that is none of this one’s.
      (context.odd ?? []).length > 0,
    witnesses: isDear ? 2 : 1,
    byDesign: leader?.byDesign === true,
    ...(leader?.provedBy && { provedBy: leader.provedBy }),
  };
  const certainty = certaintyOf(model, known, believed, { ...judged, hangsOnOne: doubted.length > 0 });
  const measureFirst = measuredFirst(flow, f, model, believed);
  const reckoning: Reckoning = { model, known, believed, shares, certainty, next, measureFirst };
  const done = (decision: Decision): Decided => ({ decision, reckoning });
  const another = anotherComplaint(flow, context, f);
  if (another) return done(another);
  const denied = deniedIn(flow, context, f);
  if (denied) return done({ kind: 'confirm', step: denied.said, because: { deniedBy: denied.by } });

  const perBit = fix ? MINUTES_PER_BIT[fix] : UNKNOWN_MINUTES_PER_BIT;
  const isLeft = (id: string) => cured === undefined || flow.before(id).includes(cured.step);
  const worth = next.find(({ step, bits, score }) => bits > LEAST_BITS && score * perBit > 1 && isLeft(step));
  const earns = earning(
    flow,
    reckoning,
    offers.filter((offer) => isLeft(offer.step)),
    isDear,
    judged,
  );
  // What is only remembered and told is looked at before anything is concluded, by the step that would tell most if
  // nothing had been told.
  const unseen = cured === undefined && !sendsOn(flow) && ![...flow.steps.values()].some((one) => isLookedAt(one, f));
  const looks = unseen
    ? nextSteps(model, posterior(model, untold(known)), offers)
        .filter((one) => isLook(flow.steps.get(one.step)))
        .toSorted((a, b) => b.bits - a.bits)[0]
    : undefined;
  // What was read at one end is read at the other before anything is concluded.
  const completes = offers.find((offer) => isLeft(offer.step) && flow.steps.get(offer.step)?.completes?.(f));
  const step = flow.steps.get(worth?.step ?? completes?.step ?? looks?.step ?? earns ?? '');
  const mayAsk = mayAskMore(flow, context);
  // Undoing a cure and doing it again costs next to nothing, and mostly leaves nothing to be asked.
  const undone = cured && doubted.length > 0 && !context.left?.includes(cured.step) && flow.steps.get(cured.step);
  if (undone && mayAsk && (context.askedAgain ?? 0) < MOST_CONFIRMED)
    return done({ kind: 'confirm', step: undone, because: 'pivotal' });
  if (step && mayAsk && !surelyElsewhere(flow, context, f, shares)) {
    const askFirst = step.tool === 'meter' && canBeAsked(toolsAtHand, f);
    return done({ kind: 'ask', step: askFirst ? (toolsAtHand as unknown as Step) : step });
  }
  const doubt = mayAsk ? doubted.find(({ step }) => !context.left?.includes(step)) : undefined;
  const again = doubt && flow.steps.get(doubt.step);
  if (again && (context.askedAgain ?? 0) < MOST_CONFIRMED)
    return done({ kind: 'confirm', step: again, because: doubt.because });
  return done(conclusion(flow, context, f, reckoning));
}

/** What a cause of a flow is called, those included that another flow looks for. */
export function causeTitle(flow: StagedFlow, id: string, f: Findings, causes: Readonly<Record<string, Cause>>): string {
  const cause = causes[id];
  if (cause) return titleOf(cause, f);
  return flow.handsOver.find((to) => elsewhere(to.flow) === id)?.title ?? id;
}
