import { isOfAnAmp } from '../steps/fitted/of-each-amp.ts';
import type { Answer, Situation, Step } from '../steps/step.ts';
import { stepName } from '../steps/subject.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { sayAmpAtTop } from './amplifier/amp-at-top.ts';
import { sayAmpDc } from './amplifier/amp-dc.ts';
import { sayAmpIn } from './amplifier/amp-in.ts';
import { sayAmpLight } from './amplifier/amp-light.ts';
import { sayAmpOhms } from './amplifier/amp-ohms.ts';
import { sayAmpOut } from './amplifier/amp-out.ts';
import { sayAmpSigns } from './amplifier/amp-signs.ts';
import { sayAmpSwitches } from './amplifier/amp-switches.ts';
import { sayGainDown } from './amplifier/gain-down.ts';
import { sayGainForVolume } from './amplifier/gain-for-volume.ts';
import { sayGainLowest } from './amplifier/gain-lowest.ts';
import { sayHalfSupply } from './amplifier/half-supply.ts';
import { sayHighpassTry } from './amplifier/highpass-try.ts';
import { sayInputSides } from './amplifier/input-sides.ts';
import { sayLampAtVolume } from './amplifier/lamp-at-volume.ts';
import { sayOneByOne } from './amplifier/one-by-one.ts';
import { sayOutputSides } from './amplifier/output-sides.ts';
import { sayRecover } from './amplifier/recover.ts';
import { saySignalPlugOut } from './amplifier/signal-plug-out.ts';
import { saySpeakerPapers } from './amplifier/speaker-papers.ts';
import { saySpeakersUnplugged } from './amplifier/speakers-unplugged.ts';
import { saySwapInputs } from './amplifier/swap-inputs.ts';
import { saySwapOutputs } from './amplifier/swap-outputs.ts';
import { saySwapSidesIn } from './amplifier/swap-sides-in.ts';
import { saySwapSidesOut } from './amplifier/swap-sides-out.ts';
import { sayWaterLook } from './amplifier/water-look.ts';
import { changed } from './bike.ts';
import { sayBassOrAll } from './ears/bass-or-all.ts';
import { sayCleanEnough } from './ears/clean-enough.ts';
import { sayCleanSource } from './ears/clean-source.ts';
import { sayConePress } from './ears/cone-press.ts';
import { sayEndsCompare } from './ears/ends-compare.ts';
import { sayEngineCompare } from './ears/engine-compare.ts';
import { sayFourCorners } from './ears/four-corners.ts';
import { sayFrontPlays } from './ears/front-plays.ts';
import { sayHowItSounds } from './ears/how-it-sounds.ts';
import { sayLoudCompare } from './ears/loud-compare.ts';
import { sayNoiseWhere } from './ears/noise-where.ts';
import { sayOtherSource } from './ears/other-source.ts';
import { sayPanelPress } from './ears/panel-press.ts';
import { sayRearHiss } from './ears/rear-hiss.ts';
import { saySidesSwapped } from './ears/sides-swapped.ts';
import { saySteppedTone } from './ears/stepped-tone.ts';
import { sayVolumeOnset } from './ears/volume-onset.ts';
import { sayWhatPlays } from './ears/what-plays.ts';
import { sayWhereChanges } from './ears/where-changes.ts';
import { sayWhereHarsh } from './ears/where-harsh.ts';
import { sayAmpChannels } from './fitted/amp-channels.ts';
import { sayAmpsDrive } from './fitted/amps-drive.ts';
import { sayBatteryKind } from './fitted/battery-kind.ts';
import { sayDeliveredAmp } from './fitted/delivered-amp.ts';
import { sayDeliveredWith } from './fitted/delivered-with.ts';
import { sayFrontAmpTurnOn } from './fitted/front-amp-turn-on.ts';
import { sayFrontDrive } from './fitted/front-drive.ts';
import { sayFrontFed } from './fitted/front-fed.ts';
import { sayRearAmpInput } from './fitted/rear-amp-input.ts';
import { sayRearAmpTurnOn } from './fitted/rear-amp-turn-on.ts';
import { sayRearDrive } from './fitted/rear-drive.ts';
import { sayRearInputs } from './fitted/rear-inputs.ts';
import { sayRearRating } from './fitted/rear-rating.ts';
import { sayUnitKind } from './fitted/unit-kind.ts';
import { sayWhichAmp } from './fitted/which-amp.ts';
import { asLeft } from './left.ts';
import { CANNOT, type Observer, type Say, type Says } from './observer.ts';
import { sayContactsLook } from './plugs/contacts-look.ts';
import { sayInputPlug } from './plugs/input-plug.ts';
import { sayLidCheck } from './plugs/lid-check.ts';
import { sayPinLook } from './plugs/pin-look.ts';
import { saySignalLeadOhms } from './plugs/signal-lead-ohms.ts';
import { saySignalLeadTug } from './plugs/signal-lead-tug.ts';
import { saySpeakerPlug } from './plugs/speaker-plug.ts';
import { sayWiggle } from './plugs/wiggle.ts';
import { sayTonesOff } from './profile/tones-off.ts';
import { sayTonesRunning } from './profile/tones-running.ts';
import { sayTopStep } from './profile/top-step.ts';
import { sayAmpRuns } from './runs/amp-runs.ts';
import { sayAmpWiresToFrame } from './runs/amp-wires-to-frame.ts';
import { sayBulbToFrame } from './runs/bulb-to-frame.ts';
import { sayCoilOhms } from './runs/coil-ohms.ts';
import { sayPopRun } from './runs/pop-run.ts';
import { sayPopSpeaker } from './runs/pop-speaker.ts';
import { sayRunOhms } from './runs/run-ohms.ts';
import { sayRunSplit } from './runs/run-split.ts';
import { saySecondLook } from './runs/second-look.ts';
import { sayWireToFrame } from './runs/wire-to-frame.ts';
import { sayAudioTarget } from './settings/audio-target.ts';
import { sayFaderCentre } from './settings/fader-centre.ts';
import { sayHeadsetHears } from './settings/headset-hears.ts';
import { sayPhoneFlat } from './settings/phone-flat.ts';
import { sayPlaySigns } from './settings/play-signs.ts';
import { sayRearControl } from './settings/rear-control.ts';
import { saySourcePlays } from './settings/source-plays.ts';
import { saySpeedOff } from './settings/speed-off.ts';
import { sayUnitFlat } from './settings/unit-flat.ts';
import { sayAmpTerminals } from './supply/amp-terminals.ts';
import { sayBodyFuse } from './supply/body-fuse.ts';
import { sayBreakerLook } from './supply/breaker-look.ts';
import { sayChargingVolts } from './supply/charging-volts.ts';
import { sayCopperLook } from './supply/copper-look.ts';
import { sayFuseLamp } from './supply/fuse-lamp.ts';
import { sayFuseLook } from './supply/fuse-look.ts';
import { sayFuseOhms } from './supply/fuse-ohms.ts';
import { sayFuseSides } from './supply/fuse-sides.ts';
import { sayJointDrop } from './supply/joint-drop.ts';
import { sayLeadOffAmp } from './supply/lead-off-amp.ts';
import { sayLowestVolts } from './supply/lowest-volts.ts';
import { sayPlusPath } from './supply/plus-path.ts';
import { sayRingsLook } from './supply/rings-look.ts';
import { saySharedScrew } from './supply/shared-screw.ts';
import { saySpareFuse } from './supply/spare-fuse.ts';
import { saySupplyUnderLoad } from './supply/supply-under-load.ts';
import { saySupplyWiggle } from './supply/supply-wiggle.ts';
import { sayTemporaryLeads } from './supply/temporary-leads.ts';
import { sayAmpGoesOff } from './told/amp-goes-off.ts';
import { sayAmpHistory } from './told/amp-history.ts';
import { sayFusesBlown } from './told/fuses-blown.ts';
import { sayHarshHistory } from './told/harsh-history.ts';
import { sayHowQuiet } from './told/how-quiet.ts';
import { sayLastChange } from './told/last-change.ts';
import { sayRearHistory } from './told/rear-history.ts';
import { sayToneHistory } from './told/tone-history.ts';
import { sayTriedAlready } from './told/tried-already.ts';
import { sayWasReflashed } from './told/was-reflashed.ts';
import { sayWhatElse } from './told/what-else.ts';
import { sayWhenSilent } from './told/when-silent.ts';
import { sayWhenWrong } from './told/when-wrong.ts';
import { sayWhichCorner } from './told/which-corner.ts';
import { sayWhichSilent } from './told/which-silent.ts';
import { sayMetersDigit } from './tools/meter-digit.ts';
import { sayToolsAtHand } from './tools/tools-at-hand.ts';
import { sayBetweenLook } from './turn-on/between-look.ts';
import { sayKeyPositions } from './turn-on/key-positions.ts';
import { sayRemoteJumper } from './turn-on/remote-jumper.ts';
import { sayRemoteKeyOff } from './turn-on/remote-key-off.ts';
import { sayRemoteLamp } from './turn-on/remote-lamp.ts';
import { sayRemoteSource } from './turn-on/remote-source.ts';
import { sayRemoteStartLamp } from './turn-on/remote-start-lamp.ts';
import { sayRemoteVolts } from './turn-on/remote-volts.ts';
import { saySenseDc } from './turn-on/sense-dc.ts';
import { saySenseLevel } from './turn-on/sense-level.ts';
import { sayWakesWhenLoud } from './turn-on/wakes-when-loud.ts';
import { sayAdapterLook } from './unit/adapter-look.ts';
import { sayAdapterPairs } from './unit/adapter-pairs.ts';
import { sayBikeLights } from './unit/bike-lights.ts';
import { sayMuteWire } from './unit/mute-wire.ts';
import { sayRearOffUnit } from './unit/rear-off-unit.ts';
import { sayRearPair } from './unit/rear-pair.ts';
import { sayRearPairAgain } from './unit/rear-pair-again.ts';
import { sayRearPairPlace } from './unit/rear-pair-place.ts';
import { sayUnitAtTop } from './unit/unit-at-top.ts';
import { sayUnitFeeds } from './unit/unit-feeds.ts';
import { sayUnitFuseOhms } from './unit/unit-fuse-ohms.ts';
import { sayUnitFuseSwap } from './unit/unit-fuse-swap.ts';
import { sayUnitFuses } from './unit/unit-fuses.ts';
import { sayUnitPins } from './unit/unit-pins.ts';
import { sayUnitPlugLook } from './unit/unit-plug-look.ts';
import { sayUnitReplug } from './unit/unit-replug.ts';
import { sayUnitRestart } from './unit/unit-restart.ts';
import { sayUnitScreen } from './unit/unit-screen.ts';
import { sayUnitSends } from './unit/unit-sends.ts';
import { sayUnitSides } from './unit/unit-sides.ts';
import { sayUnitWiresToFrame } from './unit/unit-wires-to-frame.ts';

export type { Observer } from './observer.ts';

/** Every step that a bike can answer, by its id. */
const SAYS = {
  'input-sides': sayInputSides,
  'output-sides': sayOutputSides,
  'swap-sides-in': saySwapSidesIn,
  'swap-sides-out': saySwapSidesOut,
  'front-fed': sayFrontFed,
  'speaker-plug': saySpeakerPlug,
  'how-quiet': sayHowQuiet,
  'what-plays': sayWhatPlays,
  'when-wrong': sayWhenWrong,
  'how-it-sounds': sayHowItSounds,
  'which-corner': sayWhichCorner,
  'adapter-pairs': sayAdapterPairs,
  'unit-sides': sayUnitSides,
  'amp-dc': sayAmpDc,
  'amp-in': sayAmpIn,
  'amp-light': sayAmpLight,
  'amp-ohms': sayAmpOhms,
  'amp-out': sayAmpOut,
  'amp-signs': sayAmpSigns,
  'amp-switches': sayAmpSwitches,
  'gain-down': sayGainDown,
  'half-supply': sayHalfSupply,
  'one-by-one': sayOneByOne,
  recover: sayRecover,
  'signal-plug-out': saySignalPlugOut,
  'speakers-unplugged': saySpeakersUnplugged,
  'swap-inputs': saySwapInputs,
  'swap-outputs': saySwapOutputs,
  'water-look': sayWaterLook,
  'four-corners': sayFourCorners,
  'front-plays': sayFrontPlays,
  'other-source': sayOtherSource,
  'rear-hiss': sayRearHiss,
  'amp-channels': sayAmpChannels,
  'amps-drive': sayAmpsDrive,
  'battery-kind': sayBatteryKind,
  'delivered-amp': sayDeliveredAmp,
  'delivered-with': sayDeliveredWith,
  'front-amp-turn-on': sayFrontAmpTurnOn,
  'front-drive': sayFrontDrive,
  'rear-amp-input': sayRearAmpInput,
  'rear-amp-turn-on': sayRearAmpTurnOn,
  'rear-drive': sayRearDrive,
  'rear-inputs': sayRearInputs,
  'rear-rating': sayRearRating,
  'unit-kind': sayUnitKind,
  'which-amp': sayWhichAmp,
  'contacts-look': sayContactsLook,
  'input-plug': sayInputPlug,
  'rear-off-unit': sayRearOffUnit,
  'unit-feeds': sayUnitFeeds,
  'signal-lead-tug': saySignalLeadTug,
  'signal-lead-ohms': saySignalLeadOhms,
  'unit-fuse-ohms': sayUnitFuseOhms,
  'bike-lights': sayBikeLights,
  'unit-fuse-swap': sayUnitFuseSwap,
  'unit-sends': sayUnitSends,
  'mute-wire': sayMuteWire,
  'unit-fuses': sayUnitFuses,
  'unit-pins': sayUnitPins,
  'unit-plug-look': sayUnitPlugLook,
  'unit-replug': sayUnitReplug,
  'unit-restart': sayUnitRestart,
  'unit-screen': sayUnitScreen,
  'unit-wires-to-frame': sayUnitWiresToFrame,
  'lid-check': sayLidCheck,
  'pin-look': sayPinLook,
  wiggle: sayWiggle,
  'tones-off': sayTonesOff,
  'tones-running': sayTonesRunning,
  'top-step': sayTopStep,
  'amp-runs': sayAmpRuns,
  'amp-wires-to-frame': sayAmpWiresToFrame,
  'bulb-to-frame': sayBulbToFrame,
  'coil-ohms': sayCoilOhms,
  'pop-run': sayPopRun,
  'pop-speaker': sayPopSpeaker,
  'run-ohms': sayRunOhms,
  'run-split': sayRunSplit,
  'second-look': saySecondLook,
  'wire-to-frame': sayWireToFrame,
  'audio-target': sayAudioTarget,
  'headset-hears': sayHeadsetHears,
  'play-signs': sayPlaySigns,
  'source-plays': saySourcePlays,
  'fader-centre': sayFaderCentre,
  'rear-control': sayRearControl,
  'amp-terminals': sayAmpTerminals,
  'body-fuse': sayBodyFuse,
  'copper-look': sayCopperLook,
  'fuse-lamp': sayFuseLamp,
  'breaker-look': sayBreakerLook,
  'fuse-look': sayFuseLook,
  'fuse-ohms': sayFuseOhms,
  'fuse-sides': sayFuseSides,
  'joint-drop': sayJointDrop,
  'lead-off-amp': sayLeadOffAmp,
  'charging-volts': sayChargingVolts,
  'lowest-volts': sayLowestVolts,
  'plus-path': sayPlusPath,
  'rings-look': sayRingsLook,
  'shared-screw': saySharedScrew,
  'spare-fuse': saySpareFuse,
  'supply-under-load': saySupplyUnderLoad,
  'supply-wiggle': saySupplyWiggle,
  'temporary-leads': sayTemporaryLeads,
  'amp-goes-off': sayAmpGoesOff,
  'amp-history': sayAmpHistory,
  'fuses-blown': sayFusesBlown,
  'last-change': sayLastChange,
  'rear-history': sayRearHistory,
  'tried-already': sayTriedAlready,
  'what-else': sayWhatElse,
  'when-silent': sayWhenSilent,
  'which-silent': sayWhichSilent,
  'meter-digit': sayMetersDigit,
  'tools-at-hand': sayToolsAtHand,
  'between-look': sayBetweenLook,
  'key-positions': sayKeyPositions,
  'remote-jumper': sayRemoteJumper,
  'remote-key-off': sayRemoteKeyOff,
  'remote-lamp': sayRemoteLamp,
  'remote-source': sayRemoteSource,
  'remote-start-lamp': sayRemoteStartLamp,
  'remote-volts': sayRemoteVolts,
  'sense-dc': saySenseDc,
  'sense-level': saySenseLevel,
  'wakes-when-loud': sayWakesWhenLoud,
  'adapter-look': sayAdapterLook,
  'rear-pair': sayRearPair,
  'rear-pair-again': sayRearPairAgain,
  'amp-at-top': sayAmpAtTop,
  'gain-for-volume': sayGainForVolume,
  'gain-lowest': sayGainLowest,
  'highpass-try': sayHighpassTry,
  'lamp-at-volume': sayLampAtVolume,
  'speaker-papers': saySpeakerPapers,
  'bass-or-all': sayBassOrAll,
  'clean-enough': sayCleanEnough,
  'panel-press': sayPanelPress,
  'cone-press': sayConePress,
  'ends-compare': sayEndsCompare,
  'engine-compare': sayEngineCompare,
  'clean-source': sayCleanSource,
  'sides-swapped': saySidesSwapped,
  'stepped-tone': saySteppedTone,
  'volume-onset': sayVolumeOnset,
  'where-harsh': sayWhereHarsh,
  'phone-flat': sayPhoneFlat,
  'unit-flat': sayUnitFlat,
  'harsh-history': sayHarshHistory,
  'unit-at-top': sayUnitAtTop,
  'loud-compare': sayLoudCompare,
  'where-changes': sayWhereChanges,
  'speed-off': saySpeedOff,
  'tone-history': sayToneHistory,
  'was-reflashed': sayWasReflashed,
  'noise-where': sayNoiseWhere,
  'rear-pair-place': sayRearPairPlace,
} satisfies Says;

/** The bike with the amplifier in question that a step names; null where it has no such amplifier. */
export function meaning(step: Step, bike: Ridden): Ridden | null {
  const pair = (['rear', 'front'] as const).find((one) => one === step.about?.subject);
  if (!pair || !isOfAnAmp(stepName(step))) return bike;
  // One that drives everything counts as the rear’s.
  const at = bike.world.rig.amps.findIndex(({ drives }) => (drives === 'front') === (pair === 'front'));
  return at < 0
    ? null
    : changed(bike, `about ${pair}`, (world) => (world.about === at ? world : { ...world, about: at }));
}

/** The steps that a bike can answer. */
export const OBSERVED: readonly string[] = Object.keys(SAYS);

/**
 * The raw answer of a careful person at this bike, in the condition that the step asks for: what ears, eyes and the meter
 * tell, or `cannot` where the bike has no such thing or no reading that can be used. `situation` is what is believed and
 * was answered so far; what is true is `bike.world`, its rig included. No fault is known here, only the bike.
 * @throws {RangeError} if no bike can answer the step.
 */
export function observe(step: Step, bike: Ridden, situation: Situation, observer: Observer): Answer {
  const say = (SAYS as Readonly<Record<string, Say>>)[stepName(step)];
  if (!say) throw new RangeError(`step must be one that a bike can answer, got ${step.id}`);
  const found = meaning(step, bike);
  return found ? say({ step, found, bike: asLeft(found, situation), situation, observer }) : CANNOT;
}
