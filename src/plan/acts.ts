import { cautionsOfAction } from '../causes/action-cautions.ts';
import type { RepairAction } from '../causes/repair-action.ts';
import type { CautionId } from '../steps/cautions.ts';
import { cautionsOfCondition, cautionsOfStep } from '../steps/cautions-of.ts';
import { onThisBike } from '../steps/concerns.ts';
import { type ConditionId, conditionOf } from '../steps/conditions.ts';
import type { Situation } from '../steps/step.ts';
import type { Property } from './profile/profile.ts';
import { STEP_THAT_READS } from './profile/readers.ts';

/**
 * What somebody does for a plan, as data: what is done to the bike, what is read on it, what has to be brought about for a
 * look or a listen, and what a fitter does besides. What to be careful of follows from it.
 */
export type PlanAct =
  | RepairAction
  | { readonly do: 'read'; readonly property: Property }
  | { readonly do: 'bring-about'; readonly condition: ConditionId }
  /** An amplifier goes in, or comes out, with its leads. */
  | { readonly do: 'fit-amp' }
  | { readonly do: 'take-out-amp' };

export const reads = (...properties: readonly Property[]): readonly PlanAct[] =>
  properties.map((property) => ({ do: 'read', property }));
export const bringsAbout = (...conditions: readonly ConditionId[]): readonly PlanAct[] =>
  conditions.map((condition) => ({ do: 'bring-about', condition }));

/** The leads of an amplifier, at the battery and at its terminals. */
const AMP_LEADS: readonly CautionId[] = ['minus-first', 'battery-gas', 'fuse', 'capacitors', 'key-off', 'bridge'];

function cautionsOfReading(property: Property, situation: Situation): readonly CautionId[] {
  const step = STEP_THAT_READS[property];
  const needed = (step.conditions ?? []).filter((id) => conditionOf(id).where?.(situation) ?? true);
  return [...needed.flatMap(cautionsOfCondition), ...cautionsOfStep(step, situation)];
}

function cautionsOfAct(act: PlanAct, situation: Situation): readonly CautionId[] {
  switch (act.do) {
    case 'read':
      return cautionsOfReading(act.property, situation);
    case 'bring-about':
      return cautionsOfCondition(act.condition);
    case 'fit-amp':
      return [...AMP_LEADS, 'data'];
    case 'take-out-amp':
      return AMP_LEADS;
    default:
      return cautionsOfAction(act);
  }
}

/** What to be careful of with some acts, each once. */
export const cautionsOfActs = (acts: readonly PlanAct[], situation: Situation): readonly CautionId[] =>
  onThisBike(
    acts.flatMap((act) => cautionsOfAct(act, situation)),
    situation.rig,
  );

interface Done {
  readonly acts: readonly PlanAct[];
  readonly proofActs: readonly PlanAct[];
}

/** A remedy with what to be careful of: with the work, and with the check besides what was said before. */
export function withCautions<R extends Done>(remedy: R, situation: Situation) {
  const cautions = cautionsOfActs(remedy.acts, situation);
  const proofCautions = cautionsOfActs(remedy.proofActs, situation).filter((id) => !cautions.includes(id));
  return { ...remedy, cautions, proofCautions };
}
