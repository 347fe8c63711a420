import { amplifiedAny, amplifiedSame, enableRear, moveOrBack } from './changes.ts';
import {
  ampFeedsNothing,
  ampOverlooked,
  dcOnLineLevel,
  dealerWithoutFactoryAmp,
  factoryAmpSilent,
  noSuchProfile,
  onNoAmp,
  toldAgainstMeterVerdict,
  whichRear,
} from './contradictions.ts';
import type { PlanAnswer } from './facts.ts';
import { findTheAmp, findTheUnit, followTheWires, measureFirst } from './find-out.ts';
import { backToRearOn, backToUnaltered } from './going-back.ts';
import { sameEqMixed, sameEqUnalteredAmp, sameEqWithoutAmp } from './same-eq.ts';
import { mirroringOnly, nothingToDo, replacedUnit, stay } from './settled.ts';
import type { PlanVerdict } from './verdict.ts';

/** The verdict for every kind of answer. */
export const PLAN_VERDICTS: Readonly<Record<PlanAnswer, PlanVerdict>> = {
  'nothing-to-do': nothingToDo,
  'mirroring-only': mirroringOnly,
  'find-the-unit': findTheUnit,
  'replaced-unit': replacedUnit,
  'which-rear': whichRear,
  'on-no-amp': onNoAmp,
  'amp-feeds-nothing': ampFeedsNothing,
  'amp-overlooked': ampOverlooked,
  'dc-on-line-level': dcOnLineLevel,
  'dealer-without-factory-amp': dealerWithoutFactoryAmp,
  'factory-amp-silent': factoryAmpSilent,
  'find-the-amp': findTheAmp,
  'told-against-meter': toldAgainstMeterVerdict,
  'no-such-profile': noSuchProfile,
  'same-eq-without-amp': sameEqWithoutAmp,
  'same-eq-unaltered-amp': sameEqUnalteredAmp,
  'same-eq-mixed': sameEqMixed,
  'follow-the-wires': followTheWires,
  'measure-first': measureFirst,
  stay,
  'enable-rear': enableRear,
  'back-to-unaltered': backToUnaltered,
  'back-to-rear-on': backToRearOn,
  'amplified-same': amplifiedSame,
  'amplified-any': amplifiedAny,
  'move-or-back': moveOrBack,
};
