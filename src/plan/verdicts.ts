import { amplifiedAny, amplifiedSame, enableRear, moveOrBack } from './changes.ts';
import {
  ampFeedsNothing,
  ampOverlooked,
  dcOnLineLevel,
  dealerWithoutFactoryAmp,
  factoryAmpSilent,
  noneCounted,
  noSuchProfile,
  onNoAmp,
  toldAgainstMeterVerdict,
  whichRear,
} from './contradictions.ts';
import type { PlanAnswer } from './facts.ts';
import { findTheAmp, findTheUnit, followTheWires, likelyStay, measureFirst } from './find-out.ts';
import { backIfStored, backToRearOn, backToUnaltered } from './going-back.ts';
import { sameEqMixed, sameEqUnalteredAmp, sameEqWithoutAmp } from './same-eq.ts';
import { bassMasked, mirroringOnly, nothingToDo, replacedUnit, speedVolume, stay } from './settled.ts';
import type { PlanVerdict } from './verdict.ts';

/** The verdict for every kind of answer. */
export const PLAN_VERDICTS: Readonly<Record<PlanAnswer, PlanVerdict>> = {
  'nothing-to-do': nothingToDo,
  'bass-masked': bassMasked,
  'speed-volume': speedVolume,
  'mirroring-only': mirroringOnly,
  'find-the-unit': findTheUnit,
  'replaced-unit': replacedUnit,
  'which-rear': whichRear,
  'on-no-amp': onNoAmp,
  'amp-feeds-nothing': ampFeedsNothing,
  'none-counted': noneCounted,
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
  'likely-stay': likelyStay,
  stay,
  'enable-rear': enableRear,
  'back-to-unaltered': backToUnaltered,
  'back-to-rear-on': backToRearOn,
  'back-if-stored': backIfStored,
  'amplified-same': amplifiedSame,
  'amplified-any': amplifiedAny,
  'move-or-back': moveOrBack,
};
