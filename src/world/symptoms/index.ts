import type { World } from '../state.ts';
import { batteryFlatOrLow, mirroringWontStart, speakersBlowAgain } from './energy.ts';
import { ampWontTurnOn, cutsOut, noRearSound, noSoundAtAll, oneSpeakerOrSideDead } from './silence.ts';
import { type Complaint, type FlowId, type Ridden, ridden } from './symptom.ts';
import { distortionAtVolume, eqChanges, thinNoBass, whineOrTicking } from './tone.ts';

export { type Complaint, FLOW_IDS, type FlowId, type Ridden, ridden } from './symptom.ts';

/** What decides each complaint. */
export const COMPLAINTS: Readonly<Record<FlowId, (bike: Ridden) => Complaint>> = {
  'no-rear-sound': noRearSound,
  'amp-wont-turn-on': ampWontTurnOn,
  'distortion-at-volume': distortionAtVolume,
  'eq-changes-when-engine-starts': eqChanges,
  'is-a-reflash-needed': () => ({ undecidable: 'a wish of the owner, which no state of a bike shows' }),
  'no-sound-at-all': noSoundAtAll,
  'one-speaker-or-side-dead': oneSpeakerOrSideDead,
  'whine-or-ticking': whineOrTicking,
  'thin-no-bass': thinNoBass,
  'cuts-out': cutsOut,
  'battery-flat-or-low': batteryFlatOrLow,
  'speakers-blow-again': speakersBlowAgain,
  'mirroring-wont-start': mirroringWontStart,
};

/** Whether a bike has the complaint that starts a flow. */
export const hasSymptom = (flow: FlowId, world: World): Complaint => COMPLAINTS[flow](ridden(world));
