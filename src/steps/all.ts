import { ampAtTop } from './amplifier/amp-at-top.ts';
import { ampDc } from './amplifier/amp-dc.ts';
import { ampIn } from './amplifier/amp-in.ts';
import { ampLight } from './amplifier/amp-light.ts';
import { ampOhms } from './amplifier/amp-ohms.ts';
import { ampOut } from './amplifier/amp-out.ts';
import { ampSigns } from './amplifier/amp-signs.ts';
import { ampSwitches } from './amplifier/amp-switches.ts';
import { gainDown } from './amplifier/gain-down.ts';
import { gainForVolume } from './amplifier/gain-for-volume.ts';
import { gainLowest } from './amplifier/gain-lowest.ts';
import { halfSupply } from './amplifier/half-supply.ts';
import { highpassTry } from './amplifier/highpass-try.ts';
import { inputSides } from './amplifier/input-sides.ts';
import { lampAtVolume } from './amplifier/lamp-at-volume.ts';
import { oneByOne } from './amplifier/one-by-one.ts';
import { outputSides } from './amplifier/output-sides.ts';
import { recover } from './amplifier/recover.ts';
import { signalPlugOut } from './amplifier/signal-plug-out.ts';
import { speakerPapers } from './amplifier/speaker-papers.ts';
import { speakersUnplugged } from './amplifier/speakers-unplugged.ts';
import { swapInputs } from './amplifier/swap-inputs.ts';
import { swapOutputs } from './amplifier/swap-outputs.ts';
import { swapSidesIn } from './amplifier/swap-sides-in.ts';
import { swapSidesOut } from './amplifier/swap-sides-out.ts';
import { waterLook } from './amplifier/water-look.ts';
import { bassGoneWhen } from './ears/bass-gone-when.ts';
import { bassOrAll } from './ears/bass-or-all.ts';
import { cleanEnough } from './ears/clean-enough.ts';
import { cleanSource } from './ears/clean-source.ts';
import { conePress } from './ears/cone-press.ts';
import { endsCompare } from './ears/ends-compare.ts';
import { engineCompare } from './ears/engine-compare.ts';
import { fourCorners } from './ears/four-corners.ts';
import { frontPlays } from './ears/front-plays.ts';
import { howItSounds } from './ears/how-it-sounds.ts';
import { loudCompare } from './ears/loud-compare.ts';
import { noiseWhere } from './ears/noise-where.ts';
import { otherSource } from './ears/other-source.ts';
import { panelPress } from './ears/panel-press.ts';
import { rearHiss } from './ears/rear-hiss.ts';
import { sidesSwapped } from './ears/sides-swapped.ts';
import { steppedTone } from './ears/stepped-tone.ts';
import { volumeOnset } from './ears/volume-onset.ts';
import { whatPlays } from './ears/what-plays.ts';
import { whereChanges } from './ears/where-changes.ts';
import { whereHarsh } from './ears/where-harsh.ts';
import { ampChannels } from './fitted/amp-channels.ts';
import { ampsDrive } from './fitted/amps-drive.ts';
import { batteryKind } from './fitted/battery-kind.ts';
import { deliveredAmp } from './fitted/delivered-amp.ts';
import { deliveredWith } from './fitted/delivered-with.ts';
import { frontAmpTurnOn } from './fitted/front-amp-turn-on.ts';
import { frontDrive } from './fitted/front-drive.ts';
import { frontFed } from './fitted/front-fed.ts';
import { rearAmpInput } from './fitted/rear-amp-input.ts';
import { rearAmpTurnOn } from './fitted/rear-amp-turn-on.ts';
import { rearDrive } from './fitted/rear-drive.ts';
import { rearInputs } from './fitted/rear-inputs.ts';
import { rearRating } from './fitted/rear-rating.ts';
import { unitKind } from './fitted/unit-kind.ts';
import { whichAmp } from './fitted/which-amp.ts';
import type { ConstantStepId } from './ids.ts';
import { ampCount } from './plan/amp-count.ts';
import { AMP_GROUPS, type AmpGroup } from './plan/amp-groups.ts';
import { ampKindStep } from './plan/amp-kind.ts';
import { ampLayout } from './plan/amp-layout.ts';
import { ampNeedsStep } from './plan/amp-needs.ts';
import { ampSignalStep } from './plan/amp-signal.ts';
import { ampTurnOnStep } from './plan/amp-turn-on.ts';
import { factoryAmpAnswers } from './plan/factory-amp-answers.ts';
import { frontBuild } from './plan/front-build.ts';
import { frontOhms } from './plan/front-ohms.ts';
import { hiddenAmp } from './plan/hidden-amp.ts';
import { paperBoosted } from './plan/paper-boosted.ts';
import { paperBy } from './plan/paper-by.ts';
import { paperLowered } from './plan/paper-lowered.ts';
import { paperRear } from './plan/paper-rear.ts';
import { paperSameEq } from './plan/paper-same-eq.ts';
import { plannedChange } from './plan/planned-change.ts';
import { profileSource } from './plan/profile-source.ts';
import { readAfter } from './plan/read-after.ts';
import { rearBuild } from './plan/rear-build.ts';
import { rearOhms } from './plan/rear-ohms.ts';
import { toldOrRead } from './plan/told-or-read.ts';
import { wishMirroring } from './plan/wish-mirroring.ts';
import { wishSameEq } from './plan/wish-same-eq.ts';
import { worseHow } from './plan/worse-how.ts';
import { wrongNow } from './plan/wrong-now.ts';
import { contactsLook } from './plugs/contacts-look.ts';
import { inputPlug } from './plugs/input-plug.ts';
import { lidCheck } from './plugs/lid-check.ts';
import { pinLook } from './plugs/pin-look.ts';
import { signalLeadOhms } from './plugs/signal-lead-ohms.ts';
import { signalLeadTug } from './plugs/signal-lead-tug.ts';
import { speakerPlug } from './plugs/speaker-plug.ts';
import { wiggle } from './plugs/wiggle.ts';
import { tonesOff } from './profile/tones-off.ts';
import { tonesRunning } from './profile/tones-running.ts';
import { topStep } from './profile/top-step.ts';
import { ampRuns } from './runs/amp-runs.ts';
import { ampWiresToFrame } from './runs/amp-wires-to-frame.ts';
import { bulbToFrame } from './runs/bulb-to-frame.ts';
import { coilOhms } from './runs/coil-ohms.ts';
import { popRun } from './runs/pop-run.ts';
import { popSpeaker } from './runs/pop-speaker.ts';
import { runOhms } from './runs/run-ohms.ts';
import { runSplit } from './runs/run-split.ts';
import { secondLook } from './runs/second-look.ts';
import { wireToFrame } from './runs/wire-to-frame.ts';
import { audioTarget } from './settings/audio-target.ts';
import { faderCentre } from './settings/fader-centre.ts';
import { headsetHears } from './settings/headset-hears.ts';
import { phoneFlat } from './settings/phone-flat.ts';
import { playSigns } from './settings/play-signs.ts';
import { rearControl } from './settings/rear-control.ts';
import { sourcePlays } from './settings/source-plays.ts';
import { speedOff } from './settings/speed-off.ts';
import { unitFlat } from './settings/unit-flat.ts';
import type { Step } from './step.ts';
import { eachOf } from './subject.ts';
import { ampTerminals } from './supply/amp-terminals.ts';
import { bodyFuse } from './supply/body-fuse.ts';
import { breakerLook } from './supply/breaker-look.ts';
import { chargingVolts } from './supply/charging-volts.ts';
import { copperLook } from './supply/copper-look.ts';
import { fuseLamp } from './supply/fuse-lamp.ts';
import { fuseLook } from './supply/fuse-look.ts';
import { fuseOhms } from './supply/fuse-ohms.ts';
import { fuseSides } from './supply/fuse-sides.ts';
import { jointDrop } from './supply/joint-drop.ts';
import { leadOffAmp } from './supply/lead-off-amp.ts';
import { lowestVolts } from './supply/lowest-volts.ts';
import { plusPath } from './supply/plus-path.ts';
import { ringsLook } from './supply/rings-look.ts';
import { sharedScrew } from './supply/shared-screw.ts';
import { spareFuse } from './supply/spare-fuse.ts';
import { supplyUnderLoad } from './supply/supply-under-load.ts';
import { supplyWiggle } from './supply/supply-wiggle.ts';
import { temporaryLeads } from './supply/temporary-leads.ts';
import { ampGoesOff } from './told/amp-goes-off.ts';
import { ampHistory } from './told/amp-history.ts';
import { fusesBlown } from './told/fuses-blown.ts';
import { harshHistory } from './told/harsh-history.ts';
import { howQuiet } from './told/how-quiet.ts';
import { lastChange } from './told/last-change.ts';
import { rearHistory } from './told/rear-history.ts';
import { toneHistory } from './told/tone-history.ts';
import { triedAlready } from './told/tried-already.ts';
import { wasReflashed } from './told/was-reflashed.ts';
import { whatElse } from './told/what-else.ts';
import { whenSilent } from './told/when-silent.ts';
import { whenWrong } from './told/when-wrong.ts';
import { whichCorner } from './told/which-corner.ts';
import { whichSilent } from './told/which-silent.ts';
import { metersDigit } from './tools/meter-digit.ts';
import { toolsAtHand } from './tools/tools-at-hand.ts';
import { betweenLook } from './turn-on/between-look.ts';
import { keyPositions } from './turn-on/key-positions.ts';
import { remoteJumper } from './turn-on/remote-jumper.ts';
import { remoteKeyOff } from './turn-on/remote-key-off.ts';
import { remoteLamp } from './turn-on/remote-lamp.ts';
import { remoteSource } from './turn-on/remote-source.ts';
import { remoteStartLamp } from './turn-on/remote-start-lamp.ts';
import { remoteVolts } from './turn-on/remote-volts.ts';
import { senseDc } from './turn-on/sense-dc.ts';
import { senseLevel } from './turn-on/sense-level.ts';
import { wakesWhenLoud } from './turn-on/wakes-when-loud.ts';
import { adapterLook } from './unit/adapter-look.ts';
import { adapterPairs } from './unit/adapter-pairs.ts';
import { bikeLights } from './unit/bike-lights.ts';
import { muteWire } from './unit/mute-wire.ts';
import { rearOffUnit } from './unit/rear-off-unit.ts';
import { rearPair } from './unit/rear-pair.ts';
import { rearPairAgain } from './unit/rear-pair-again.ts';
import { rearPairPlace } from './unit/rear-pair-place.ts';
import { unitAtTop } from './unit/unit-at-top.ts';
import { unitFeeds } from './unit/unit-feeds.ts';
import { unitFuseOhms } from './unit/unit-fuse-ohms.ts';
import { unitFuseSwap } from './unit/unit-fuse-swap.ts';
import { unitFuses } from './unit/unit-fuses.ts';
import { unitPins } from './unit/unit-pins.ts';
import { unitPlugLook } from './unit/unit-plug-look.ts';
import { unitReplug } from './unit/unit-replug.ts';
import { unitRestart } from './unit/unit-restart.ts';
import { unitScreen } from './unit/unit-screen.ts';
import { unitSends } from './unit/unit-sends.ts';
import { unitSides } from './unit/unit-sides.ts';
import { unitWiresToFrame } from './unit/unit-wires-to-frame.ts';

/** Questions that are asked of each amplifier of a planned build: one step for each group of amplifiers. */
const OF_A_GROUP = [ampKindStep, ampTurnOnStep, ampSignalStep, ampNeedsStep];
const ofEachGroup = (Object.keys(AMP_GROUPS) as AmpGroup[]).flatMap((group) => OF_A_GROUP.map((of): Step => of(group)));

/** The steps that are one constant each. One that is missing does not compile. */
const CONSTANTS = {
  'input-sides': inputSides,
  'output-sides': outputSides,
  'swap-sides-in': swapSidesIn,
  'swap-sides-out': swapSidesOut,
  'front-fed': frontFed,
  'speaker-plug': speakerPlug,
  'how-quiet': howQuiet,
  'what-plays': whatPlays,
  'when-wrong': whenWrong,
  'how-it-sounds': howItSounds,
  'which-corner': whichCorner,
  'adapter-pairs': adapterPairs,
  'unit-sides': unitSides,
  'amp-dc': ampDc,
  'amp-in': ampIn,
  'amp-light': ampLight,
  'amp-ohms': ampOhms,
  'amp-out': ampOut,
  'amp-signs': ampSigns,
  'amp-switches': ampSwitches,
  'gain-down': gainDown,
  'half-supply': halfSupply,
  'one-by-one': oneByOne,
  recover: recover,
  'signal-plug-out': signalPlugOut,
  'speakers-unplugged': speakersUnplugged,
  'swap-inputs': swapInputs,
  'swap-outputs': swapOutputs,
  'water-look': waterLook,
  'four-corners': fourCorners,
  'front-plays': frontPlays,
  'other-source': otherSource,
  'audio-target': audioTarget,
  'headset-hears': headsetHears,
  'play-signs': playSigns,
  'source-plays': sourcePlays,
  'rear-off-unit': rearOffUnit,
  'unit-feeds': unitFeeds,
  'signal-lead-tug': signalLeadTug,
  'signal-lead-ohms': signalLeadOhms,
  'unit-fuse-ohms': unitFuseOhms,
  'bike-lights': bikeLights,
  'unit-fuse-swap': unitFuseSwap,
  'unit-sends': unitSends,
  'mute-wire': muteWire,
  'unit-fuses': unitFuses,
  'unit-pins': unitPins,
  'unit-restart': unitRestart,
  'unit-screen': unitScreen,
  'unit-wires-to-frame': unitWiresToFrame,
  'rear-hiss': rearHiss,
  'amp-channels': ampChannels,
  'amps-drive': ampsDrive,
  'battery-kind': batteryKind,
  'delivered-amp': deliveredAmp,
  'delivered-with': deliveredWith,
  'front-amp-turn-on': frontAmpTurnOn,
  'front-drive': frontDrive,
  'rear-amp-input': rearAmpInput,
  'rear-amp-turn-on': rearAmpTurnOn,
  'rear-drive': rearDrive,
  'rear-inputs': rearInputs,
  'rear-rating': rearRating,
  'unit-kind': unitKind,
  'which-amp': whichAmp,
  'amp-count': ampCount,
  'amp-layout': ampLayout,
  'factory-amp-answers': factoryAmpAnswers,
  'front-build': frontBuild,
  'hidden-amp': hiddenAmp,
  'paper-boosted': paperBoosted,
  'paper-by': paperBy,
  'paper-lowered': paperLowered,
  'paper-rear': paperRear,
  'paper-same-eq': paperSameEq,
  'planned-change': plannedChange,
  'profile-source': profileSource,
  'rear-build': rearBuild,
  'wish-mirroring': wishMirroring,
  'wish-same-eq': wishSameEq,
  'wrong-now': wrongNow,
  'worse-how': worseHow,
  'told-or-read': toldOrRead,
  'read-after': readAfter,
  'bass-gone-when': bassGoneWhen,
  'front-ohms': frontOhms,
  'rear-ohms': rearOhms,
  'contacts-look': contactsLook,
  'input-plug': inputPlug,
  'unit-plug-look': unitPlugLook,
  'unit-replug': unitReplug,
  'lid-check': lidCheck,
  'pin-look': pinLook,
  wiggle: wiggle,
  'tones-off': tonesOff,
  'tones-running': tonesRunning,
  'top-step': topStep,
  'amp-runs': ampRuns,
  'amp-wires-to-frame': ampWiresToFrame,
  'bulb-to-frame': bulbToFrame,
  'coil-ohms': coilOhms,
  'pop-run': popRun,
  'pop-speaker': popSpeaker,
  'run-ohms': runOhms,
  'run-split': runSplit,
  'second-look': secondLook,
  'wire-to-frame': wireToFrame,
  'fader-centre': faderCentre,
  'rear-control': rearControl,
  'amp-terminals': ampTerminals,
  'body-fuse': bodyFuse,
  'copper-look': copperLook,
  'fuse-lamp': fuseLamp,
  'breaker-look': breakerLook,
  'fuse-look': fuseLook,
  'fuse-ohms': fuseOhms,
  'fuse-sides': fuseSides,
  'joint-drop': jointDrop,
  'lead-off-amp': leadOffAmp,
  'charging-volts': chargingVolts,
  'lowest-volts': lowestVolts,
  'plus-path': plusPath,
  'rings-look': ringsLook,
  'shared-screw': sharedScrew,
  'spare-fuse': spareFuse,
  'supply-under-load': supplyUnderLoad,
  'supply-wiggle': supplyWiggle,
  'temporary-leads': temporaryLeads,
  'amp-goes-off': ampGoesOff,
  'amp-history': ampHistory,
  'fuses-blown': fusesBlown,
  'last-change': lastChange,
  'rear-history': rearHistory,
  'tried-already': triedAlready,
  'what-else': whatElse,
  'when-silent': whenSilent,
  'which-silent': whichSilent,
  'meter-digit': metersDigit,
  'tools-at-hand': toolsAtHand,
  'between-look': betweenLook,
  'key-positions': keyPositions,
  'remote-jumper': remoteJumper,
  'remote-key-off': remoteKeyOff,
  'remote-lamp': remoteLamp,
  'remote-source': remoteSource,
  'remote-start-lamp': remoteStartLamp,
  'remote-volts': remoteVolts,
  'sense-dc': senseDc,
  'sense-level': senseLevel,
  'wakes-when-loud': wakesWhenLoud,
  'adapter-look': adapterLook,
  'rear-pair': rearPair,
  'rear-pair-again': rearPairAgain,
  'amp-at-top': ampAtTop,
  'gain-for-volume': gainForVolume,
  'gain-lowest': gainLowest,
  'highpass-try': highpassTry,
  'lamp-at-volume': lampAtVolume,
  'speaker-papers': speakerPapers,
  'bass-or-all': bassOrAll,
  'clean-enough': cleanEnough,
  'panel-press': panelPress,
  'cone-press': conePress,
  'ends-compare': endsCompare,
  'engine-compare': engineCompare,
  'clean-source': cleanSource,
  'sides-swapped': sidesSwapped,
  'stepped-tone': steppedTone,
  'volume-onset': volumeOnset,
  'where-harsh': whereHarsh,
  'phone-flat': phoneFlat,
  'unit-flat': unitFlat,
  'harsh-history': harshHistory,
  'unit-at-top': unitAtTop,
  'loud-compare': loudCompare,
  'where-changes': whereChanges,
  'speed-off': speedOff,
  'tone-history': toneHistory,
  'was-reflashed': wasReflashed,
  'noise-where': noiseWhere,
  'rear-pair-place': rearPairPlace,
} satisfies Record<ConstantStepId, Step>;

/** Every step by its id, for tools, tests and the proof. A page loads the steps of its own flow and no others. */
export const ALL_STEPS: Readonly<Record<string, Step>> = {
  ...CONSTANTS,
  ...Object.fromEntries(
    [...Object.values<Step>(CONSTANTS).flatMap(eachOf), ...ofEachGroup].map((step) => [step.id, step]),
  ),
};
