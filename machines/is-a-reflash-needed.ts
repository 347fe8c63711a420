import { needIsProved } from '../src/plan/amp-need.ts';
import { dealerMatters } from '../src/plan/answer-clash.ts';
import { decide as decidePlan } from '../src/plan/decide.ts';
import type { PlanFacts } from '../src/plan/decision.ts';
import { nextToMeasure, type PlanAnswer, planCase, wasRead } from '../src/plan/facts.ts';
import { type Property, toldAgainstMeter } from '../src/plan/profile/profile.ts';
import { toReadAgain } from '../src/plan/profile/read-again.ts';
import { PLAN_VERDICTS } from '../src/plan/verdicts.ts';
import { bassGoneWhen } from '../src/steps/ears/bass-gone-when.ts';
import { deliveredAmp } from '../src/steps/fitted/delivered-amp.ts';
import { deliveredWith } from '../src/steps/fitted/delivered-with.ts';
import { rearInputs } from '../src/steps/fitted/rear-inputs.ts';
import { unitKind } from '../src/steps/fitted/unit-kind.ts';
import { type Findings, is, outcomeNamed } from '../src/steps/outcome.ts';
import { ampCount } from '../src/steps/plan/amp-count.ts';
import { AMP_GROUPS, type AmpGroup } from '../src/steps/plan/amp-groups.ts';
import { ampKindStep } from '../src/steps/plan/amp-kind.ts';
import { ampLayout } from '../src/steps/plan/amp-layout.ts';
import { ampNeedsStep } from '../src/steps/plan/amp-needs.ts';
import { ampSignalStep } from '../src/steps/plan/amp-signal.ts';
import { ampTurnOnStep } from '../src/steps/plan/amp-turn-on.ts';
import { factoryAmpAnswers } from '../src/steps/plan/factory-amp-answers.ts';
import { frontBuild } from '../src/steps/plan/front-build.ts';
import { frontOhms } from '../src/steps/plan/front-ohms.ts';
import { hiddenAmp } from '../src/steps/plan/hidden-amp.ts';
import { paperBoosted } from '../src/steps/plan/paper-boosted.ts';
import { paperBy } from '../src/steps/plan/paper-by.ts';
import { paperLowered } from '../src/steps/plan/paper-lowered.ts';
import { paperRear } from '../src/steps/plan/paper-rear.ts';
import { paperSameEq } from '../src/steps/plan/paper-same-eq.ts';
import type { PlannedChange } from '../src/steps/plan/planned-change.ts';
import { profileSource } from '../src/steps/plan/profile-source.ts';
import { readAfter } from '../src/steps/plan/read-after.ts';
import { rearBuild } from '../src/steps/plan/rear-build.ts';
import { rearOhms } from '../src/steps/plan/rear-ohms.ts';
import { toldOrRead } from '../src/steps/plan/told-or-read.ts';
import { wishSameEq } from '../src/steps/plan/wish-same-eq.ts';
import { worseHow } from '../src/steps/plan/worse-how.ts';
import { tonesOff } from '../src/steps/profile/tones-off.ts';
import { tonesRunning } from '../src/steps/profile/tones-running.ts';
import { topStep } from '../src/steps/profile/top-step.ts';
import { metersDigit } from '../src/steps/tools/meter-digit.ts';
import { rearPair } from '../src/steps/unit/rear-pair.ts';
import { opening } from './is-a-reflash-needed.opening.ts';
import {
  ask,
  askAgain,
  askThen,
  type Branch,
  type Claim,
  claim,
  conclude,
  decide,
  type FlowState,
  type Route,
  rowsFlow,
} from './rows.ts';

const plans = (plan: PlannedChange) => (findings: Findings) => is(findings, 'planned-change', plan);
const asked = (findings: Findings, step: { readonly id: string }) => outcomeNamed(findings, step.id) !== undefined;

const onlyMirroringAndNothingWrong = claim(
  'phone mirroring is the only wish, and nothing is wrong',
  (f) => planCase(f).answer === 'mirroring-only',
);

const hardestKnown = claim('an amplifier is known to need the unaltered output', (f) => needIsProved(f.rig.amps ?? []));
const drives = (group: AmpGroup) =>
  claim(`an amplifier drives ${group}`, (f) => (f.rig.amps ?? []).some((amp) => amp.drives === group));

/** Whether a wish for the same EQ makes another answer of it: what was read before it was asked must not hide that. */
const wishChanges = (facts: PlanFacts): boolean =>
  decidePlan({ ...facts, sameEqWanted: true }).answer !== decidePlan({ ...facts, sameEqWanted: false }).answer;
const EQ_STILL_OPEN: ReadonlySet<PlanAnswer> = new Set<PlanAnswer>([
  'measure-first',
  'follow-the-wires',
  'likely-stay',
  'stay',
]);
const ampMakesEqAWish = claim('an amplifier plays, so the same EQ can be wished for', (f) => {
  const { facts, answer } = planCase(f);
  const open = EQ_STILL_OPEN.has(answer);
  const listening = facts.amp !== 'none' && (open || answer.startsWith('amplified') || wishChanges(facts));
  return listening && !plans('same-eq')(f) && !plans('bass-gone')(f) && !asked(f, wishSameEq);
});
const storedProfileMatters = claim('the answer depends on what is stored now', (f) => {
  const { answer, decision } = planCase(f);
  return (
    answer === 'measure-first' || (answer === 'follow-the-wires' && decision.open.every((feed) => feed === 'inputs'))
  );
});
const notReadYet = claim(
  'the answer depends on what is stored now, and nothing of it was read',
  (f) => storedProfileMatters.holds(f) && !wasRead(f),
);
const ampFromNewMatters = claim('it matters whether the bike was built with an amplifier', (f) => {
  const { answer, facts } = planCase(f);
  const onHearsay = answer === 'enable-rear' && is(f, 'profile-source', 'never');
  const matters = answer === 'measure-first' || answer.startsWith('back') || answer === 'move-or-back' || onHearsay;
  return facts.unit === 'factory' && matters && !asked(f, deliveredAmp);
});
const toldOtherwise = claim(
  'a paper, or memory, says the opposite of the meter',
  (f) => toldAgainstMeter(f).length > 0 && !asked(f, toldOrRead),
);
const readingsDisagree = claim('readings fit no profile together', (f) => toReadAgain(f) !== undefined);
const readBefore = claim('a reading is saved, from before or after the work', (f) => f.rig.profileRead !== undefined);
const withAmp = claim(
  'an amplifier is to be added or exchanged',
  (f) => plans('amp-added')(f) || plans('amp-exchanged')(f),
);
const newFront = claim(
  'new front speakers go on the head unit',
  (f) => plans('front-only')(f) && planCase(f).facts.front === 'unit' && !asked(f, frontOhms),
);
const newRear = claim(
  'new rear speakers go on the head unit',
  (f) => plans('rear-on-unit')(f) && planCase(f).facts.rear === 'unit' && !asked(f, rearOhms),
);
const inputsMatter = claim(
  'it matters where the rear inputs get their signal',
  (f) => planCase(f).decision.open.includes('inputs') && !asked(f, rearInputs),
);
const deliveryMatters = claim('it matters what the bike was built with', (f) => {
  const { answer, decision } = planCase(f);
  return answer === 'measure-first' && decision.separators.includes('rear') && !asked(f, deliveredWith);
});
const cannotMeasure = claim('it depends on the profile, and nothing can be measured now', (f) => {
  const source = f.outcome('profile-source');
  return planCase(f).answer === 'measure-first' && (source === 'unknown' || source === 'cannot');
});
const paperMayBeWrong = claim(
  'a paper names an amplified profile, and every amplifier was added later',
  (f) => dealerMatters(f) && !asked(f, paperBy),
);
const ampMayBeHidden = claim('the level is to go up again, and no amplifier was counted', (f) => {
  const { facts, answer } = planCase(f);
  return facts.amp === 'none' && answer.startsWith('back') && !asked(f, hiddenAmp);
});
const busMatters = claim('an amplified profile is to be selected for a factory amplifier', (f) => {
  const factory = (f.rig.amps ?? []).some((amp) => amp.kind === 'factory');
  return factory && planCase(f).answer.startsWith('amplified') && !asked(f, factoryAmpAnswers);
});
const bestMeasured = (f: Findings): Property | null => nextToMeasure(planCase(f));
const meterUnknown = claim(
  'a reading separates the answers, and the meter is not known yet',
  (f) => bestMeasured(f) !== null && !asked(f, metersDigit),
);
const tonesMissing = claim('the two tones separate the answers, or come first', (f) => {
  const best = bestMeasured(f);
  return best === 'boosted' || (best === 'sameEq' && !asked(f, tonesOff));
});
const separates = (property: Property) =>
  claim(`the best reading is that of ${property}`, (f) => bestMeasured(f) === property);

/** The state that tells each kind of answer. */
const TOLD_IN = {
  'nothing-to-do': 'nothingToDo',
  'mirroring-only': 'onlyTheMirroringSetting',
  'bass-masked': 'bassIsMasked',
  'speed-volume': 'loudnessFollowsSpeed',
  'replaced-unit': 'nothingToReflash',
  'find-the-unit': 'unitIsUnknown',
  'which-rear': 'rearIsMissedWithoutRear',
  'on-no-amp': 'speakersHangOnNoAmp',
  'amp-feeds-nothing': 'ampFeedsNothing',
  'none-counted': 'noAmpWasCounted',
  'amp-overlooked': 'ampWasOverlooked',
  'dc-on-line-level': 'lineLevelCarriesNoDc',
  'dealer-without-factory-amp': 'noDealerSelectsThat',
  'factory-amp-silent': 'factoryAmpDoesNotAnswer',
  'find-the-amp': 'ampIsUnknown',
  'follow-the-wires': 'wiresAreUnknown',
  'same-eq-without-amp': 'sameEqNeedsAnAmp',
  'same-eq-unaltered-amp': 'sameEqNeedsAnotherAmp',
  'same-eq-mixed': 'sameEqNeedsEveryPairOnAnAmp',
  'told-against-meter': 'meterSaysSomethingElse',
  'no-such-profile': 'noProfileDoesThat',
  'measure-first': 'profileIsUnknown',
  'likely-stay': 'mostLikelyStayAsItIs',
  stay: 'stayAsItIs',
  'enable-rear': 'onlyEnableTheRear',
  'back-to-unaltered': 'goBackToUnaltered',
  'back-to-rear-on': 'goBackToRearOn',
  'back-if-stored': 'goBackIfThatIsStored',
  'amplified-same': 'selectAmplifiedWithTheSameEq',
  'amplified-any': 'selectAmplified',
  'move-or-back': 'moveThePairOrGoBack',
} as const satisfies Record<PlanAnswer, string>;

const answers = Object.keys(TOLD_IN) as readonly PlanAnswer[];
const answerIs = (answer: PlanAnswer): Claim => claim(`the answer is ${answer}`, (f) => planCase(f).answer === answer);
/**
 * One branch for each kind of answer, after what must be checked before some of them. The last one needs no claim: it
 * is what is left.
 */
const tellTheAnswer: readonly Branch[] = [
  { when: ampFromNewMatters, to: 'askAmpFromNew' },
  { when: toldOtherwise, to: 'askWhichCounts' },
  { when: readingsDisagree, to: 'readAgain' },
  { when: ampMayBeHidden, to: 'askHiddenAmp' },
  { when: busMatters, to: 'askFactoryAmp' },
  ...answers
    .filter((answer) => answer !== 'measure-first')
    .map((answer) => ({ when: answerIs(answer), to: TOLD_IN[answer] })),
  { to: TOLD_IN['measure-first'] },
];
const verdictStates = Object.fromEntries(
  answers.map((answer) => [TOLD_IN[answer], conclude(PLAN_VERDICTS[answer])] as const),
);

const SEVERAL = ['both', 'front', 'rear'] as const satisfies readonly AmpGroup[];
const STATE_OF = { only: 'Amp', both: 'AllAmp', front: 'FrontAmp', rear: 'RearAmp' } as const;

/** On to the next group of amplifiers that is there. What cannot change the answer any more is left out. */
const groupsFrom = (first: number): readonly Branch[] => [
  { when: hardestKnown, to: 'askFront' },
  ...SEVERAL.slice(first).map((group) => ({ when: drives(group), to: `ask${STATE_OF[group]}Kind` })),
  { to: 'askFront' },
];

/** The questions about the amplifiers of one group. */
function ampStates(group: AmpGroup): Readonly<Record<string, FlowState>> {
  const state = STATE_OF[group];
  const next: Route = group === 'only' ? 'askFront' : groupsFrom(SEVERAL.indexOf(group) + 1);
  return {
    [`ask${state}Kind`]: ask(ampKindStep(group), {
      'add-on': `ask${state}TurnOn`,
      factory: next,
      cannot: `ask${state}TurnOn`,
    }),
    [`ask${state}TurnOn`]: ask(ampTurnOnStep(group), {
      wire: `ask${state}Needs`,
      signal: `ask${state}Needs`,
      dc: `ask${state}Signal`,
      cannot: `ask${state}Needs`,
    }),
    [`ask${state}Signal`]: ask(ampSignalStep(group), {
      line: TOLD_IN['dc-on-line-level'],
      speaker: `ask${state}Needs`,
      cannot: `ask${state}Needs`,
    }),
    [`ask${state}Needs`]: askThen(ampNeedsStep(group), next),
  };
}
const everyAmpState = Object.assign({}, ...(Object.keys(AMP_GROUPS) as AmpGroup[]).map(ampStates)) as Readonly<
  Record<string, FlowState>
>;

export const isAReflashNeeded = rowsFlow(opening.id, opening.title, {
  ...opening.states,
  askBassGone: ask(bassGoneWhen, {
    'at-start': 'askUnit',
    riding: TOLD_IN['bass-masked'],
    'with-speed': TOLD_IN['speed-volume'],
    cannot: 'askUnit',
  }),
  askWorse: askThen(worseHow, 'workIsDone'),
  workIsDone: decide({ when: readBefore, to: 'askReadAfter' }, { to: 'askMirroring' }),
  askReadAfter: askThen(readAfter, 'askMirroring'),
  askUnit: ask(unitKind, {
    factory: [{ when: onlyMirroringAndNothingWrong, to: TOLD_IN['mirroring-only'] }, { to: 'askAmps' }],
    replaced: TOLD_IN['replaced-unit'],
    cannot: TOLD_IN['find-the-unit'],
  }),

  askAmps: ask(ampCount, {
    '0': [{ when: withAmp, to: TOLD_IN['none-counted'] }, { to: 'askRear' }],
    '1': 'askAmpKind',
    '2': 'askAmpLayout',
    '3': 'askAmpLayout',
    cannot: 'askFront',
  }),
  askAmpLayout: ask(ampLayout, {
    'front-rear': groupsFrom(0),
    'all-rear': groupsFrom(0),
    'all-front': groupsFrom(0),
    rear: groupsFrom(0),
    front: groupsFrom(0),
    all: groupsFrom(0),
    cannot: 'askAmpKind',
  }),
  ...everyAmpState,
  askFront: askThen(frontBuild, 'askRear'),
  askRear: askThen(rearBuild, 'weighTheBuild'),
  askFrontOhms: askThen(frontOhms, 'weighTheBuild'),
  askRearOhms: askThen(rearOhms, 'weighTheBuild'),
  weighTheBuild: decide(
    { when: newFront, to: 'askFrontOhms' },
    { when: newRear, to: 'askRearOhms' },
    { when: ampMakesEqAWish, to: 'askSameEq' },
    { when: ampFromNewMatters, to: 'askAmpFromNew' },
    { when: notReadYet, to: 'askSource' },
    { when: storedProfileMatters, to: 'weighTheProfile' },
    ...tellTheAnswer,
  ),
  askSameEq: askThen(wishSameEq, 'weighTheBuild'),
  askAmpFromNew: askThen(deliveredAmp, 'weighTheBuild'),

  askSource: ask(profileSource, {
    measure: 'weighTheProfile',
    record: 'askPaperRear',
    never: 'weighTheProfile',
    unknown: 'weighTheProfile',
    cannot: 'weighTheProfile',
  }),
  askPaperRear: askThen(paperRear, 'askPaperLevel'),
  askPaperLevel: askThen(paperLowered, 'askPaperBoost'),
  askPaperBoost: askThen(paperBoosted, 'askPaperEq'),
  askPaperEq: askThen(paperSameEq, 'weighTheProfile'),

  weighTheProfile: decide(
    { when: paperMayBeWrong, to: 'askPaperBy' },
    { when: inputsMatter, to: 'askRearInputs' },
    { when: deliveryMatters, to: 'askDelivered' },
    { when: toldOtherwise, to: 'askWhichCounts' },
    { when: readingsDisagree, to: 'readAgain' },
    { when: cannotMeasure, to: TOLD_IN['measure-first'] },
    { when: meterUnknown, to: 'askMeter' },
    { when: tonesMissing, to: 'measureTones' },
    { when: separates('rear'), to: 'measureRear' },
    { when: separates('sameEq'), to: 'measureTonesRunning' },
    { when: separates('lowered'), to: 'measureTopStep' },
    ...tellTheAnswer,
  ),
  askWhichCounts: askThen(toldOrRead, 'weighTheProfile'),
  readAgain: askAgain(toReadAgain, 'weighTheProfile'),
  askPaperBy: askThen(paperBy, 'weighTheProfile'),
  askHiddenAmp: askThen(hiddenAmp, 'weighTheProfile'),
  askFactoryAmp: askThen(factoryAmpAnswers, 'weighTheProfile'),
  askRearInputs: askThen(rearInputs, 'weighTheProfile'),
  askDelivered: askThen(deliveredWith, 'weighTheProfile'),
  askMeter: askThen(metersDigit, 'weighTheProfile'),
  measureTones: askThen(tonesOff, 'weighTheProfile'),
  measureRear: askThen(rearPair, 'weighTheProfile'),
  measureTonesRunning: askThen(tonesRunning, 'weighTheProfile'),
  measureTopStep: askThen(topStep, 'weighTheProfile'),

  ...verdictStates,
});
