import { ampInputPlugOff } from '../causes/amp-input/amp-input-plug-off.ts';
import { converterDead } from '../causes/amp-input/converter-dead.ts';
import { inputDc } from '../causes/amp-input/input-dc.ts';
import { inputPinPushedBack } from '../causes/amp-input/input-pin-pushed-back.ts';
import { senseNoHalfSupply } from '../causes/amp-input/sense-no-half-supply.ts';
import { senseStarved } from '../causes/amp-input/sense-starved.ts';
import { signalLeadOpen } from '../causes/amp-input/signal-lead-open.ts';
import { sleepsInQuiet } from '../causes/amp-input/sleeps-in-quiet.ts';
import { ampBodyFuseOpen } from '../causes/amplifier/amp-body-fuse-open.ts';
import { ampDead } from '../causes/amplifier/amp-dead.ts';
import { ampOutputDc } from '../causes/amplifier/amp-output-dc.ts';
import { ampShortedInside } from '../causes/amplifier/amp-shorted-inside.ts';
import { ampTooHot } from '../causes/amplifier/amp-too-hot.ts';
import { gainTooHigh } from '../causes/amplifier/gain-too-high.ts';
import { waterInside } from '../causes/amplifier/water-inside.ts';
import { batteryCutsOff } from '../causes/battery/battery-cuts-off.ts';
import { batteryUndercharged } from '../causes/battery/battery-undercharged.ts';
import { batteryWorn } from '../causes/battery/battery-worn.ts';
import { chargingTooHigh } from '../causes/battery/charging-too-high.ts';
import { chargingTooLow } from '../causes/battery/charging-too-low.ts';
import { loadTooLow } from '../causes/runs/load-too-low.ts';
import { speakerPairShorted } from '../causes/runs/speaker-pair-shorted.ts';
import { speakerWireToFrame } from '../causes/runs/speaker-wire-to-frame.ts';
import { ampGroundOpen } from '../causes/supply/amp-ground-open.ts';
import { ampGroundResistive } from '../causes/supply/amp-ground-resistive.ts';
import { ampTerminalLoose } from '../causes/supply/amp-terminal-loose.ts';
import { batteryLugLoose } from '../causes/supply/battery-lug-loose.ts';
import { bothLeadsBad } from '../causes/supply/both-leads-bad.ts';
import { breakerTripsHot } from '../causes/supply/breaker-trips-hot.ts';
import { fuseHolderBad } from '../causes/supply/fuse-holder-bad.ts';
import { groundLeadTooThin } from '../causes/supply/ground-lead-too-thin.ts';
import { mainFuseOpen } from '../causes/supply/main-fuse-open.ts';
import { plusLeadBroken } from '../causes/supply/plus-lead-broken.ts';
import { plusLeadChafed } from '../causes/supply/plus-lead-chafed.ts';
import { plusLeadTooThin } from '../causes/supply/plus-lead-too-thin.ts';
import { sharedGroundScrew } from '../causes/supply/shared-ground-screw.ts';
import { adapterWithoutRemote } from '../causes/turn-on/adapter-without-remote.ts';
import { remoteOnPermanent } from '../causes/turn-on/remote-on-permanent.ts';
import { remoteSourceDead } from '../causes/turn-on/remote-source-dead.ts';
import { remoteVoltsLow } from '../causes/turn-on/remote-volts-low.ts';
import { remoteWireOpen } from '../causes/turn-on/remote-wire-open.ts';
import { turnOnModeWrong } from '../causes/turn-on/turn-on-mode-wrong.ts';
import { unitFeedMissing } from '../causes/turn-on/unit-feed-missing.ts';
import { unitOutputGrounded } from '../causes/unit/unit-output-grounded.ts';
import table from './amp-wont-turn-on.json' with { type: 'json' };
import { lateOf } from './late.ts';

/** Made by `npm run likelihoods`. Do not edit: change the model, the steps or the flow, and make it anew. */
export const late = lateOf(table, [
  ampInputPlugOff,
  converterDead,
  inputDc,
  inputPinPushedBack,
  senseNoHalfSupply,
  senseStarved,
  signalLeadOpen,
  sleepsInQuiet,
  ampBodyFuseOpen,
  ampDead,
  ampOutputDc,
  ampShortedInside,
  ampTooHot,
  gainTooHigh,
  waterInside,
  batteryCutsOff,
  batteryUndercharged,
  batteryWorn,
  chargingTooHigh,
  chargingTooLow,
  loadTooLow,
  speakerPairShorted,
  speakerWireToFrame,
  ampGroundOpen,
  ampGroundResistive,
  ampTerminalLoose,
  batteryLugLoose,
  bothLeadsBad,
  breakerTripsHot,
  fuseHolderBad,
  groundLeadTooThin,
  mainFuseOpen,
  plusLeadBroken,
  plusLeadChafed,
  plusLeadTooThin,
  sharedGroundScrew,
  adapterWithoutRemote,
  remoteOnPermanent,
  remoteSourceDead,
  remoteVoltsLow,
  remoteWireOpen,
  turnOnModeWrong,
  unitFeedMissing,
  unitOutputGrounded,
]);
