import type { Axle } from '../rig/corner.ts';
import { type Findings, is } from '../steps/outcome.ts';
import { type AmpNeed, ampNeed } from './amp-need.ts';
import { answerClashes } from './answer-clash.ts';
import { decide, separators } from './decide.ts';
import type { Answer, Decision, PlanFacts, SameEqClash } from './decision.ts';
import { MEASURED_BY, PROPERTIES, type Property, type StoredProfile, toldAgainstMeter } from './profile/profile.ts';
import { type Believed, believed, covering } from './profile/stored.ts';

/** As long as something can still be read, the answer must hold for all but this much of the belief. Judged. */
const SURE_SHARE = 0.97;
/** What is told, or heard, may leave this much open: then the answer says what it hangs on. Judged. */
const LIKELY_SHARE = 0.8;

const oneOf = <const T extends string>(outcome: string | undefined, ...known: readonly T[]): T | 'unknown' =>
  known.find((option) => option === outcome) ?? 'unknown';

/** What the amplifiers need. When nobody could count them, what drives the speakers tells whether there is one. */
function ampOf(findings: Findings, front: PlanFacts['front'], rear: PlanFacts['rear']): AmpNeed {
  const { amps } = findings.rig;
  if (amps) return ampNeed(amps);
  return front === 'unit' && (rear === 'none' || rear === 'unit') ? 'none' : 'unknown';
}

export const wantsMirroring = (findings: Findings): boolean =>
  findings.outcome('planned-change') === 'mirroring' || findings.outcome('wish-mirroring') === 'yes';

const nothingWrong = (findings: Findings) => findings.outcome('wrong-now') === 'no';

function bassGoneOf(findings: Findings): PlanFacts['bassGone'] {
  if (findings.outcome('planned-change') !== 'bass-gone') return null;
  const when = findings.outcome('bass-gone-when');
  return when === 'riding' || when === 'with-speed' ? when : null;
}

/** The wish for one EQ: said, or what it comes to that the bass goes with the engine. */
const wantsSameEq = (findings: Findings): boolean =>
  is(findings, 'planned-change', 'same-eq', 'bass-gone') || findings.outcome('wish-same-eq') === 'yes';

/** Everything that the decision depends on, from what is known of the case. */
export function planFacts(findings: Findings, profiles: readonly StoredProfile[]): PlanFacts {
  const plan = findings.outcome('planned-change');
  const front = oneOf(findings.outcome('front-build'), 'unit', 'amp');
  const rear = oneOf(findings.outcome('rear-build'), 'none', 'unit', 'amp');
  const amp = ampOf(findings, front, rear);
  return {
    nothingToDo: plan === 'nothing' && nothingWrong(findings) && !wantsMirroring(findings),
    bassGone: bassGoneOf(findings),
    unit: plan === 'unit-replaced' ? 'replaced' : oneOf(findings.outcome('unit-kind'), 'factory', 'replaced'),
    profiles,
    fromNew: findings.rig.deliveredAmp === 'yes',
    toldAgainstMeter: toldAgainstMeter(findings).length > 0,
    clashes: answerClashes(findings),
    amp,
    front: amp === 'none' && front === 'unknown' ? 'unit' : front,
    rear,
    inputs: oneOf(findings.outcome('rear-inputs'), 'own', 'front'),
    sameEqWanted: wantsSameEq(findings),
    rearMissed: findings.outcome('wrong-now') === 'rear-silent',
  };
}

/** The pairs that hang on the head unit with fewer ohms than its outputs are made for, as far as anybody said. */
const UNIT_LEAST_OHM = 4;
export const belowRated = ({ findings: { rig }, facts }: Pick<PlanCase, 'findings' | 'facts'>): readonly Axle[] => [
  ...(facts.front === 'unit' && (rig.frontRatedOhm ?? UNIT_LEAST_OHM) < UNIT_LEAST_OHM ? (['front'] as const) : []),
  ...(facts.rear === 'unit' && (rig.rearRatedOhm ?? UNIT_LEAST_OHM) < UNIT_LEAST_OHM ? (['rear'] as const) : []),
];

/**
 * The kinds of answer that a rider gets: those of the table, those that a wish makes of them, and that nothing is needed
 * as far as anybody knows.
 */
export type PlanAnswer = Answer | 'mirroring-only' | 'likely-stay' | `same-eq-${SameEqClash}`;

export interface PlanCase {
  readonly findings: Findings;
  readonly facts: PlanFacts;
  readonly decision: Decision;
  readonly answer: PlanAnswer;
  /** Every profile that no reading contradicts, with its share. */
  readonly shares: readonly Believed[];
  /** Whether the answer leaves out profiles that something told or heard makes unlikely. */
  readonly leansOn: 'readings' | 'likelihood';
}

const isOpen = ({ answer }: Decision) => answer === 'measure-first' || answer === 'follow-the-wires';

/** The answer to the whole case. A wish that cannot be had is the answer where nothing else is to do. */
function answerTo(findings: Findings, facts: PlanFacts, decision: Decision): PlanAnswer {
  const plan = findings.outcome('planned-change');
  if (plan === 'mirroring' && nothingWrong(findings) && facts.unit === 'factory') return 'mirroring-only';
  if (decision.sameEqClash && decision.answer === 'stay') return `same-eq-${decision.sameEqClash}`;
  return decision.answer;
}

/** Whether the rider said how the profile is known, and that is not by reading it. */
const isTold = (findings: Findings): boolean =>
  is(findings, 'profile-source', 'never', 'record') && findings.outcome('told-or-read') !== 'read';
/** Whether nothing more will be read: nobody can, or all that could tell was. */
const cannotRead = (findings: Findings): boolean => is(findings, 'profile-source', 'unknown', 'cannot');

export function planCase(findings: Findings): PlanCase {
  const shares = believed(findings);
  const sure = planFacts(findings, covering(shares, SURE_SHARE));
  const likely = { ...sure, profiles: covering(shares, LIKELY_SHARE) };
  const [surely, likelyDecided] = [decide(sure), decide(likely)];
  const exhausted = surely.answer === 'measure-first' && nextIn(findings, sure) === null;
  const leans =
    surely.answer === 'measure-first' &&
    !isOpen(likelyDecided) &&
    (isTold(findings) || cannotRead(findings) || exhausted);
  const [facts, decision] = leans ? [likely, likelyDecided] : [sure, surely];
  const c: PlanCase = {
    findings,
    facts,
    decision,
    answer: answerTo(findings, facts, decision),
    shares,
    leansOn: leans ? 'likelihood' : 'readings',
  };
  const needsNothing = c.answer === 'stay' || c.answer.startsWith('same-eq');
  // That nothing is needed is the one answer after which nobody looks again: hearsay is not enough for it.
  return needsNothing && leftOut(c).length > 0 ? { ...c, answer: 'likely-stay' } : c;
}

/** Whether the readings alone lead to the same answer; without any, whether every profile does. */
export function isMeasured({ findings, facts, decision }: PlanCase): boolean {
  const profiles = covering(believed(findings, 'readings'), wasRead(findings) ? SURE_SHARE : 1);
  return decide({ ...facts, profiles, toldAgainstMeter: false }).answer === decision.answer;
}

/** The profiles that only what was told or heard speaks against, and with which the answer is another one. */
export function leftOut(c: PlanCase): readonly StoredProfile[] {
  if (isMeasured(c)) return [];
  const answer = (profile: StoredProfile) =>
    decide({ ...c.facts, profiles: [profile], toldAgainstMeter: false }).answer;
  return c.shares
    .map(({ profile }) => profile)
    .filter((profile) => !c.facts.profiles.includes(profile) && answer(profile) !== c.decision.answer);
}

/** The property that is best measured next, or null when no reading that is still open can separate the answers. */
function nextIn(findings: Findings, facts: PlanFacts): Property | null {
  const tonesGiven = findings.outcome(MEASURED_BY.boosted) !== 'cannot';
  const open = PROPERTIES.filter(
    (property) => findings.outcome(MEASURED_BY[property]) === undefined && (property !== 'sameEq' || tonesGiven),
  );
  return separators(facts, open)[0] ?? null;
}

export const nextToMeasure = ({ findings, facts, decision }: PlanCase): Property | null =>
  decision.answer === 'measure-first' ? nextIn(findings, facts) : null;

/** Whether anything of the profile was read, in this case or before it. */
export const wasRead = (findings: Findings): boolean =>
  PROPERTIES.some((property) => {
    const outcome = findings.outcome(MEASURED_BY[property]);
    return outcome !== undefined && outcome !== 'cannot';
  });
