import type { AMP_GROUPS, AmpGroup } from './plan/amp-groups.ts';
import type { OutcomeOf } from './step.ts';
import type { Subject } from './subject.ts';

/** Every step that is one constant, by its id. Types only: whoever names a step in a condition does not load it. */
interface Constants {
  'revs-compare': typeof import('./ears/revs-compare.ts').revsCompare;
  'line-converter': typeof import('./fitted/line-converter.ts').lineConverter;
  'battery-ripple': typeof import('./supply/battery-ripple.ts').batteryRipple;
  'starter-turns': typeof import('./told/starter-turns.ts').starterTurns;
  'input-sides': typeof import('./amplifier/input-sides.ts').inputSides;
  'output-sides': typeof import('./amplifier/output-sides.ts').outputSides;
  'swap-sides-in': typeof import('./amplifier/swap-sides-in.ts').swapSidesIn;
  'swap-sides-out': typeof import('./amplifier/swap-sides-out.ts').swapSidesOut;
  'front-fed': typeof import('./fitted/front-fed.ts').frontFed;
  'speaker-plug': typeof import('./plugs/speaker-plug.ts').speakerPlug;
  'how-quiet': typeof import('./told/how-quiet.ts').howQuiet;
  'how-it-sounds': typeof import('./ears/how-it-sounds.ts').howItSounds;
  'what-plays': typeof import('./ears/what-plays.ts').whatPlays;
  'when-wrong': typeof import('./told/when-wrong.ts').whenWrong;
  'which-corner': typeof import('./told/which-corner.ts').whichCorner;
  'adapter-pairs': typeof import('./unit/adapter-pairs.ts').adapterPairs;
  'unit-sides': typeof import('./unit/unit-sides.ts').unitSides;
  'amp-dc': typeof import('./amplifier/amp-dc.ts').ampDc;
  'amp-in': typeof import('./amplifier/amp-in.ts').ampIn;
  'amp-light': typeof import('./amplifier/amp-light.ts').ampLight;
  'amp-ohms': typeof import('./amplifier/amp-ohms.ts').ampOhms;
  'amp-out': typeof import('./amplifier/amp-out.ts').ampOut;
  'amp-signs': typeof import('./amplifier/amp-signs.ts').ampSigns;
  'amp-switches': typeof import('./amplifier/amp-switches.ts').ampSwitches;
  'gain-down': typeof import('./amplifier/gain-down.ts').gainDown;
  'half-supply': typeof import('./amplifier/half-supply.ts').halfSupply;
  'one-by-one': typeof import('./amplifier/one-by-one.ts').oneByOne;
  recover: typeof import('./amplifier/recover.ts').recover;
  'signal-plug-out': typeof import('./amplifier/signal-plug-out.ts').signalPlugOut;
  'speakers-unplugged': typeof import('./amplifier/speakers-unplugged.ts').speakersUnplugged;
  'swap-inputs': typeof import('./amplifier/swap-inputs.ts').swapInputs;
  'swap-outputs': typeof import('./amplifier/swap-outputs.ts').swapOutputs;
  'water-look': typeof import('./amplifier/water-look.ts').waterLook;
  'four-corners': typeof import('./ears/four-corners.ts').fourCorners;
  'front-plays': typeof import('./ears/front-plays.ts').frontPlays;
  'other-source': typeof import('./ears/other-source.ts').otherSource;
  'audio-target': typeof import('./settings/audio-target.ts').audioTarget;
  'headset-hears': typeof import('./settings/headset-hears.ts').headsetHears;
  'play-signs': typeof import('./settings/play-signs.ts').playSigns;
  'source-plays': typeof import('./settings/source-plays.ts').sourcePlays;
  'rear-off-unit': typeof import('./unit/rear-off-unit.ts').rearOffUnit;
  'unit-feeds': typeof import('./unit/unit-feeds.ts').unitFeeds;
  'signal-lead-tug': typeof import('./plugs/signal-lead-tug.ts').signalLeadTug;
  'signal-lead-ohms': typeof import('./plugs/signal-lead-ohms.ts').signalLeadOhms;
  'unit-fuse-ohms': typeof import('./unit/unit-fuse-ohms.ts').unitFuseOhms;
  'bike-lights': typeof import('./unit/bike-lights.ts').bikeLights;
  'unit-fuse-swap': typeof import('./unit/unit-fuse-swap.ts').unitFuseSwap;
  'unit-sends': typeof import('./unit/unit-sends.ts').unitSends;
  'mute-wire': typeof import('./unit/mute-wire.ts').muteWire;
  'unit-fuses': typeof import('./unit/unit-fuses.ts').unitFuses;
  'unit-pins': typeof import('./unit/unit-pins.ts').unitPins;
  'unit-restart': typeof import('./unit/unit-restart.ts').unitRestart;
  'unit-screen': typeof import('./unit/unit-screen.ts').unitScreen;
  'unit-wires-to-frame': typeof import('./unit/unit-wires-to-frame.ts').unitWiresToFrame;
  'rear-hiss': typeof import('./ears/rear-hiss.ts').rearHiss;
  'amp-channels': typeof import('./fitted/amp-channels.ts').ampChannels;
  'amps-drive': typeof import('./fitted/amps-drive.ts').ampsDrive;
  'battery-kind': typeof import('./fitted/battery-kind.ts').batteryKind;
  'delivered-amp': typeof import('./fitted/delivered-amp.ts').deliveredAmp;
  'delivered-with': typeof import('./fitted/delivered-with.ts').deliveredWith;
  'front-amp-turn-on': typeof import('./fitted/front-amp-turn-on.ts').frontAmpTurnOn;
  'front-drive': typeof import('./fitted/front-drive.ts').frontDrive;
  'rear-amp-input': typeof import('./fitted/rear-amp-input.ts').rearAmpInput;
  'rear-amp-turn-on': typeof import('./fitted/rear-amp-turn-on.ts').rearAmpTurnOn;
  'rear-drive': typeof import('./fitted/rear-drive.ts').rearDrive;
  'rear-inputs': typeof import('./fitted/rear-inputs.ts').rearInputs;
  'rear-rating': typeof import('./fitted/rear-rating.ts').rearRating;
  'unit-kind': typeof import('./fitted/unit-kind.ts').unitKind;
  'which-amp': typeof import('./fitted/which-amp.ts').whichAmp;
  'amp-count': typeof import('./plan/amp-count.ts').ampCount;
  'amp-layout': typeof import('./plan/amp-layout.ts').ampLayout;
  'factory-amp-answers': typeof import('./plan/factory-amp-answers.ts').factoryAmpAnswers;
  'front-build': typeof import('./plan/front-build.ts').frontBuild;
  'hidden-amp': typeof import('./plan/hidden-amp.ts').hiddenAmp;
  'paper-boosted': typeof import('./plan/paper-boosted.ts').paperBoosted;
  'paper-by': typeof import('./plan/paper-by.ts').paperBy;
  'paper-lowered': typeof import('./plan/paper-lowered.ts').paperLowered;
  'paper-rear': typeof import('./plan/paper-rear.ts').paperRear;
  'paper-same-eq': typeof import('./plan/paper-same-eq.ts').paperSameEq;
  'planned-change': typeof import('./plan/planned-change.ts').plannedChange;
  'profile-source': typeof import('./plan/profile-source.ts').profileSource;
  'rear-build': typeof import('./plan/rear-build.ts').rearBuild;
  'wish-mirroring': typeof import('./plan/wish-mirroring.ts').wishMirroring;
  'wish-same-eq': typeof import('./plan/wish-same-eq.ts').wishSameEq;
  'wrong-now': typeof import('./plan/wrong-now.ts').wrongNow;
  'worse-how': typeof import('./plan/worse-how.ts').worseHow;
  'told-or-read': typeof import('./plan/told-or-read.ts').toldOrRead;
  'read-after': typeof import('./plan/read-after.ts').readAfter;
  'bass-gone-when': typeof import('./ears/bass-gone-when.ts').bassGoneWhen;
  'front-ohms': typeof import('./plan/front-ohms.ts').frontOhms;
  'rear-ohms': typeof import('./plan/rear-ohms.ts').rearOhms;
  'contacts-look': typeof import('./plugs/contacts-look.ts').contactsLook;
  'unit-plug-look': typeof import('./unit/unit-plug-look.ts').unitPlugLook;
  'unit-replug': typeof import('./unit/unit-replug.ts').unitReplug;
  'input-plug': typeof import('./plugs/input-plug.ts').inputPlug;
  'lid-check': typeof import('./plugs/lid-check.ts').lidCheck;
  'pin-look': typeof import('./plugs/pin-look.ts').pinLook;
  wiggle: typeof import('./plugs/wiggle.ts').wiggle;
  'tones-off': typeof import('./profile/tones-off.ts').tonesOff;
  'tones-running': typeof import('./profile/tones-running.ts').tonesRunning;
  'top-step': typeof import('./profile/top-step.ts').topStep;
  'amp-runs': typeof import('./runs/amp-runs.ts').ampRuns;
  'amp-wires-to-frame': typeof import('./runs/amp-wires-to-frame.ts').ampWiresToFrame;
  'bulb-to-frame': typeof import('./runs/bulb-to-frame.ts').bulbToFrame;
  'coil-ohms': typeof import('./runs/coil-ohms.ts').coilOhms;
  'pop-run': typeof import('./runs/pop-run.ts').popRun;
  'pop-speaker': typeof import('./runs/pop-speaker.ts').popSpeaker;
  'run-ohms': typeof import('./runs/run-ohms.ts').runOhms;
  'run-split': typeof import('./runs/run-split.ts').runSplit;
  'second-look': typeof import('./runs/second-look.ts').secondLook;
  'wire-to-frame': typeof import('./runs/wire-to-frame.ts').wireToFrame;
  'fader-centre': typeof import('./settings/fader-centre.ts').faderCentre;
  'rear-control': typeof import('./settings/rear-control.ts').rearControl;
  'amp-terminals': typeof import('./supply/amp-terminals.ts').ampTerminals;
  'body-fuse': typeof import('./supply/body-fuse.ts').bodyFuse;
  'copper-look': typeof import('./supply/copper-look.ts').copperLook;
  'fuse-lamp': typeof import('./supply/fuse-lamp.ts').fuseLamp;
  'breaker-look': typeof import('./supply/breaker-look.ts').breakerLook;
  'fuse-look': typeof import('./supply/fuse-look.ts').fuseLook;
  'fuse-ohms': typeof import('./supply/fuse-ohms.ts').fuseOhms;
  'fuse-sides': typeof import('./supply/fuse-sides.ts').fuseSides;
  'joint-drop': typeof import('./supply/joint-drop.ts').jointDrop;
  'lead-off-amp': typeof import('./supply/lead-off-amp.ts').leadOffAmp;
  'charging-volts': typeof import('./supply/charging-volts.ts').chargingVolts;
  'lowest-volts': typeof import('./supply/lowest-volts.ts').lowestVolts;
  'plus-path': typeof import('./supply/plus-path.ts').plusPath;
  'rings-look': typeof import('./supply/rings-look.ts').ringsLook;
  'shared-screw': typeof import('./supply/shared-screw.ts').sharedScrew;
  'spare-fuse': typeof import('./supply/spare-fuse.ts').spareFuse;
  'supply-under-load': typeof import('./supply/supply-under-load.ts').supplyUnderLoad;
  'supply-wiggle': typeof import('./supply/supply-wiggle.ts').supplyWiggle;
  'temporary-leads': typeof import('./supply/temporary-leads.ts').temporaryLeads;
  'amp-goes-off': typeof import('./told/amp-goes-off.ts').ampGoesOff;
  'amp-history': typeof import('./told/amp-history.ts').ampHistory;
  'fuses-blown': typeof import('./told/fuses-blown.ts').fusesBlown;
  'last-change': typeof import('./told/last-change.ts').lastChange;
  'rear-history': typeof import('./told/rear-history.ts').rearHistory;
  'tried-already': typeof import('./told/tried-already.ts').triedAlready;
  'what-else': typeof import('./told/what-else.ts').whatElse;
  'when-silent': typeof import('./told/when-silent.ts').whenSilent;
  'which-silent': typeof import('./told/which-silent.ts').whichSilent;
  'meter-digit': typeof import('./tools/meter-digit.ts').metersDigit;
  'tools-at-hand': typeof import('./tools/tools-at-hand.ts').toolsAtHand;
  'between-look': typeof import('./turn-on/between-look.ts').betweenLook;
  'key-positions': typeof import('./turn-on/key-positions.ts').keyPositions;
  'remote-jumper': typeof import('./turn-on/remote-jumper.ts').remoteJumper;
  'remote-key-off': typeof import('./turn-on/remote-key-off.ts').remoteKeyOff;
  'remote-lamp': typeof import('./turn-on/remote-lamp.ts').remoteLamp;
  'remote-source': typeof import('./turn-on/remote-source.ts').remoteSource;
  'remote-start-lamp': typeof import('./turn-on/remote-start-lamp.ts').remoteStartLamp;
  'remote-volts': typeof import('./turn-on/remote-volts.ts').remoteVolts;
  'sense-dc': typeof import('./turn-on/sense-dc.ts').senseDc;
  'sense-level': typeof import('./turn-on/sense-level.ts').senseLevel;
  'wakes-when-loud': typeof import('./turn-on/wakes-when-loud.ts').wakesWhenLoud;
  'adapter-look': typeof import('./unit/adapter-look.ts').adapterLook;
  'rear-pair': typeof import('./unit/rear-pair.ts').rearPair;
  'rear-pair-again': typeof import('./unit/rear-pair-again.ts').rearPairAgain;
  'amp-at-top': typeof import('./amplifier/amp-at-top.ts').ampAtTop;
  'gain-for-volume': typeof import('./amplifier/gain-for-volume.ts').gainForVolume;
  'gain-lowest': typeof import('./amplifier/gain-lowest.ts').gainLowest;
  'highpass-try': typeof import('./amplifier/highpass-try.ts').highpassTry;
  'lamp-at-volume': typeof import('./amplifier/lamp-at-volume.ts').lampAtVolume;
  'speaker-papers': typeof import('./amplifier/speaker-papers.ts').speakerPapers;
  'bass-or-all': typeof import('./ears/bass-or-all.ts').bassOrAll;
  'clean-enough': typeof import('./ears/clean-enough.ts').cleanEnough;
  'panel-press': typeof import('./ears/panel-press.ts').panelPress;
  'cone-press': typeof import('./ears/cone-press.ts').conePress;
  'ends-compare': typeof import('./ears/ends-compare.ts').endsCompare;
  'engine-compare': typeof import('./ears/engine-compare.ts').engineCompare;
  'clean-source': typeof import('./ears/clean-source.ts').cleanSource;
  'sides-swapped': typeof import('./ears/sides-swapped.ts').sidesSwapped;
  'stepped-tone': typeof import('./ears/stepped-tone.ts').steppedTone;
  'volume-onset': typeof import('./ears/volume-onset.ts').volumeOnset;
  'where-harsh': typeof import('./ears/where-harsh.ts').whereHarsh;
  'phone-flat': typeof import('./settings/phone-flat.ts').phoneFlat;
  'unit-flat': typeof import('./settings/unit-flat.ts').unitFlat;
  'harsh-history': typeof import('./told/harsh-history.ts').harshHistory;
  'unit-at-top': typeof import('./unit/unit-at-top.ts').unitAtTop;
  'loud-compare': typeof import('./ears/loud-compare.ts').loudCompare;
  'where-changes': typeof import('./ears/where-changes.ts').whereChanges;
  'speed-off': typeof import('./settings/speed-off.ts').speedOff;
  'tone-history': typeof import('./told/tone-history.ts').toneHistory;
  'was-reflashed': typeof import('./told/was-reflashed.ts').wasReflashed;
  'noise-where': typeof import('./ears/noise-where.ts').noiseWhere;
  'rear-pair-place': typeof import('./unit/rear-pair-place.ts').rearPairPlace;
}

type GroupId = (typeof AMP_GROUPS)[AmpGroup]['id'];
type OfEachGroup<What extends string, S> = { readonly [Id in `${GroupId}-${What}`]: S };

/** The steps that are asked of each group of amplifiers, by their ids. */
type OfGroups = OfEachGroup<'kind', ReturnType<typeof import('./plan/amp-kind.ts').ampKindStep>> &
  OfEachGroup<'turn-on', ReturnType<typeof import('./plan/amp-turn-on.ts').ampTurnOnStep>> &
  OfEachGroup<'signal', ReturnType<typeof import('./plan/amp-signal.ts').ampSignalStep>> &
  OfEachGroup<'needs', ReturnType<typeof import('./plan/amp-needs.ts').ampNeedsStep>>;

/** Steps that can be asked of several things, by the keys of their other subjects. */
type OfOthers<Id extends keyof Constants> = Constants[Id] extends {
  readonly subjects: readonly [unknown, ...(infer Other extends Subject)[]];
}
  ? { readonly [Key in `${Id}@${Other}`]: Constants[Id] }
  : Record<never, never>;
type EachOf<Id extends keyof Constants> = (Id extends unknown ? (of: OfOthers<Id>) => void : never) extends (
  of: infer All,
) => void
  ? All
  : never;

export type ConstantStepId = keyof Constants;
type Steps = Constants & OfGroups & EachOf<keyof Constants>;

/** What the answers to a step go by: its id, with another subject than its first behind it. One that is misspelt does not compile. */
export type StepId = keyof Steps;

/** What may be known of a step that was asked: one of its outcomes, or that it could not be done. */
export type KnownOf<Id extends StepId> = OutcomeOf<Steps[Id]> | 'cannot';
