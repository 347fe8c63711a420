import { batteryFlatOrLow, mirroringWontStart, speakersBlowAgain } from './energy.ts';
import {
  ampGoesOff,
  ampWontTurnOn,
  cutsOut,
  noRearSound,
  noSoundAtAll,
  oneSideWeak,
  oneSpeakerOrSideDead,
  rearWeak,
} from './silence.ts';
import type { Complaint, ComplaintId, Ridden } from './symptom.ts';
import { bassCancels, distortionAtVolume, eqChanges, thinNoBass, whineOrTicking } from './tone.ts';

export { cranksBadly } from './energy.ts';
export { type WhenOff, whenAmpGoesOff } from './silence.ts';
export {
  ABOUT_AN_AMP,
  type Complaint,
  type ComplaintId,
  FLOW_IDS,
  type FlowId,
  type Ridden,
  ridden,
} from './symptom.ts';

/** What decides each complaint. */
export const COMPLAINTS: Readonly<Record<ComplaintId, (bike: Ridden) => Complaint>> = {
  'no-rear-sound': noRearSound,
  'rear-weak': rearWeak,
  'amp-wont-turn-on': ampWontTurnOn,
  'amp-goes-off': ampGoesOff,
  'distortion-at-volume': distortionAtVolume,
  'eq-changes-when-engine-starts': eqChanges,
  'is-a-reflash-needed': () => ({ undecidable: 'a wish of the owner, which no state of a bike shows' }),
  'no-sound-at-all': noSoundAtAll,
  'one-speaker-or-side-dead': oneSpeakerOrSideDead,
  'one-side-weak': oneSideWeak,
  'whine-or-ticking': whineOrTicking,
  'thin-no-bass': thinNoBass,
  'bass-cancels': bassCancels,
  'cuts-out': cutsOut,
  'battery-flat-or-low': batteryFlatOrLow,
  'speakers-blow-again': speakersBlowAgain,
  'mirroring-wont-start': mirroringWontStart,
};
