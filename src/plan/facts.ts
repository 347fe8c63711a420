import type { Findings } from '../steps/outcome.ts';
import { type AmpNeed, ampNeed } from './amp-need.ts';
import { answerClashes } from './answer-clash.ts';
import { decide, separators } from './decide.ts';
import type { Answer, Decision, PlanFacts, SameEqClash } from './decision.ts';
import {
  candidates,
  MEASURED_BY,
  measuredProfile,
  PROPERTIES,
  type Property,
  profileNow,
  toldAgainstMeter,
} from './profile/profile.ts';

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

/** Everything that the decision depends on, from what is known of the case. */
export function planFacts(findings: Findings): PlanFacts {
  const plan = findings.outcome('planned-change');
  const front = oneOf(findings.outcome('front-build'), 'unit', 'amp');
  const rear = oneOf(findings.outcome('rear-build'), 'none', 'unit', 'amp');
  const amp = ampOf(findings, front, rear);
  return {
    nothingToDo: plan === 'nothing' && nothingWrong(findings) && !wantsMirroring(findings),
    unit: plan === 'unit-replaced' ? 'replaced' : oneOf(findings.outcome('unit-kind'), 'factory', 'replaced'),
    profiles: candidates(profileNow(findings), findings.rig.deliveredWith),
    toldAgainstMeter: toldAgainstMeter(findings).length > 0,
    clashes: answerClashes(findings),
    amp,
    front: amp === 'none' && front === 'unknown' ? 'unit' : front,
    rear,
    inputs: oneOf(findings.outcome('rear-inputs'), 'own', 'front'),
    sameEqWanted: plan === 'same-eq' || findings.outcome('wish-same-eq') === 'yes',
    rearMissed: findings.outcome('wrong-now') === 'rear-silent',
  };
}

/** The kinds of answer that a rider gets: those of the table, and those that a wish makes of them. */
export type PlanAnswer = Answer | 'mirroring-only' | `same-eq-${SameEqClash}`;

export interface PlanCase {
  readonly findings: Findings;
  readonly facts: PlanFacts;
  readonly decision: Decision;
  readonly answer: PlanAnswer;
}

/**
 * The answer to the whole case. A wish that cannot be had is the answer where nothing else is to do, and at once where it
 * is the only wish: then nobody has to measure for it.
 */
function answerTo(findings: Findings, facts: PlanFacts, decision: Decision): PlanAnswer {
  const plan = findings.outcome('planned-change');
  if (plan === 'mirroring' && nothingWrong(findings) && facts.unit === 'factory') return 'mirroring-only';
  if (decision.sameEqClash) {
    const onlyWish = plan === 'same-eq' && nothingWrong(findings);
    const open = decision.answer === 'measure-first' || decision.answer === 'follow-the-wires';
    if (decision.answer === 'stay' || (onlyWish && open)) return `same-eq-${decision.sameEqClash}`;
  }
  return decision.answer;
}

export function planCase(findings: Findings): PlanCase {
  const facts = planFacts(findings);
  const decision = decide(facts);
  return { findings, facts, decision, answer: answerTo(findings, facts, decision) };
}

/** Whether the readings alone lead to the same answer. */
export function isMeasured({ findings, facts, decision }: PlanCase): boolean {
  const profiles = candidates(measuredProfile(findings), findings.rig.deliveredWith);
  return decide({ ...facts, profiles, toldAgainstMeter: false }).answer === decision.answer;
}

/** The property that is best measured next, or null when no reading that is still open can separate the answers. */
export function nextToMeasure({ findings, facts, decision }: PlanCase): Property | null {
  if (decision.answer !== 'measure-first') return null;
  const tonesGiven = findings.outcome(MEASURED_BY.boosted) !== 'cannot';
  const open = PROPERTIES.filter(
    (property) => findings.outcome(MEASURED_BY[property]) === undefined && (property !== 'sameEq' || tonesGiven),
  );
  return separators(facts, open)[0] ?? null;
}
