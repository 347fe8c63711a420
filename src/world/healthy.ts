import { voltageRatio } from '../compute/decibel.ts';
import { gainTargetV } from '../compute/gain.ts';
import { boostClipsAtV } from '../compute/headroom.ts';
import { COIL_HIGHEST_RATIO, COIL_LOWEST_RATIO } from '../compute/impedance.ts';
import { BRIDGE_LOSS_UNLOADED_V, cleanOutputV, FULL_STEP_V, levelV, powerW } from '../compute/level.ts';
import {
  AMPLIFIED_CHANGES_SHAPE,
  AMPLIFIED_SAME_SHAPE,
  type ProfileShape,
  UNALTERED_SHAPE,
} from '../compute/profile-response.ts';
import { axleOf, type Corner, inFrontOf, perCorner } from '../rig/corner.ts';
import type { AmpValues } from '../rig/fields.ts';
import type { Rig } from '../rig/rig.ts';
import { cleanIntoV } from './bike/clip.ts';
import { REST_RATIO } from './bike/stage.ts';
import { SOUND_CONTACT_OHM } from './elements/contact.ts';
import type { Amp, Contact, Run, Speaker, World } from './state.ts';
import { driverOf, isAmplified, mainAmp, type ValuedRig, valuedRig } from './valued-rig.ts';

/* Values in this file without a source are from memory of the trade: common practice, no published source. */

export const SOUND: Contact = { ohm: SOUND_CONTACT_OHM };
/** Copper without a break, a connector that is not there: part of the wire that it is in. */
export const WHOLE: Contact = { ohm: 0 };
export const OPEN: Contact = { ohm: Infinity };
/** One lug of a ground lead: its two together are one sound contact. */
export const LUG: Contact = { ohm: SOUND_CONTACT_OHM / 2 };
/** Bare copper under the screw of a terminal: much metal on metal. */
export const CLAMP: Contact = { ohm: SOUND_CONTACT_OHM / 5 };
const SOUND_PAIR = { plus: SOUND, minus: SOUND };

/** Inner ohms times capacity: 14 mΩ at 28 Ah. */
const BATTERY_OHM_AH = 0.4;
/** Ohms that a full battery shows to charging, times capacity: 3 A at 28 Ah and 14.2 V. */
const ACCEPT_OHM_AH = 14;
/** What the bike takes without the head unit: lamps, engine management, pump, ignition. */
const BASE_A = { off: 6.5, idle: 17.5, cruise: 14.5 };
export const UNIT_AWAKE_A = 1.5;
const GROUND_LEAD_M = 0.9;
const INPUT_LIMIT_SPEAKER_V = 12;
const INPUT_LIMIT_LINE_V = 5;
const HIGHPASS_HZ = 80;
/** What is left of the resting volts of a supply while the music is loud. */
const SAGGED_RATIO = 0.85;
const SPEAKER_W = 100;

export type ProfileName = 'unaltered' | 'amplified-same' | 'amplified-changes';
/** A stored profile with the two numbers that this bike has for it. */
export function shapeOf(rig: ValuedRig, name: ProfileName): ProfileShape {
  if (name === 'unaltered') return { ...UNALTERED_SHAPE, boostDb: rig.boostDb };
  const shape = name === 'amplified-same' ? AMPLIFIED_SAME_SHAPE : AMPLIFIED_CHANGES_SHAPE;
  return { ...shape, levelDb: -rig.loweredByDb };
}

/** A unit of another maker has no stored profiles: its output is full and flat. */
const REPLACED_SHAPE: ProfileShape = { ...AMPLIFIED_SAME_SHAPE, levelDb: 0 };

/** The profile that suits what is fitted. */
export function fittingShape(rig: ValuedRig): ProfileShape {
  if (rig.unitKind === 'replaced') return REPLACED_SHAPE;
  const wantsUnaltered = rig.amps.some(({ needs }) => needs === 'unaltered');
  return shapeOf(rig, isAmplified(rig) && !wantsUnaltered ? 'amplified-same' : 'unaltered');
}

/** Volts of the loudest clean step at an amplifier's input, at a tone that no bell of the profile lifts. */
export const loudestInputV = (rig: ValuedRig, shape: ProfileShape): number =>
  Math.min(
    FULL_STEP_V * voltageRatio({ gainDb: shape.levelDb }),
    cleanOutputV({ supplyV: rig.supplyRunningV, lossV: BRIDGE_LOSS_UNLOADED_V }),
  );

/**
 * The loudest step that a sensible rider uses: the one at which no tone is cut off with the engine off, a boost of the
 * profile included. A flat output for an amplifier has all its steps.
 */
function topCleanVolume(rig: ValuedRig): number {
  const { levelDb, boostDb } = fittingShape(rig);
  const leastOhm = Math.min(
    rig.frontRatedOhm,
    rig.rearRatedOhm / (rig.rearWiring === 'parallel' ? rig.rearPerChannel : 1),
  );
  // A speaker of no ohms is refused by the rules of the circuit, by its name.
  if (!(leastOhm > 0)) return 1;
  const cleanV = cleanIntoV({ supplyV: SAGGED_RATIO * rig.supplyOffV, loadOhm: COIL_LOWEST_RATIO * leastOhm });
  return Math.min(
    1,
    boostClipsAtV({ cleanV: Math.max(cleanV, 0.1), boostDb }) / (FULL_STEP_V * voltageRatio({ gainDb: levelDb })),
  );
}

const drivesCorner = (amp: AmpValues, corner: Corner) => amp.drives === 'both' || amp.drives === axleOf(corner);

function healthyAmp(rig: ValuedRig, made: AmpValues): Amp {
  const loudestV = loudestInputV(rig, fittingShape(rig));
  const line = made.input === 'line';
  const sharesFront = made.fedFrom === 'front';
  const gainRatio = gainTargetV({ powerW: made.powerW, loadOhm: made.ratedOhm }) / loudestV;
  const twoInputs = sharesFront && made.drives === 'both';
  const lead = { sectionM2: made.plusLeadM2 };
  return {
    alive: true,
    wet: 'no',
    ring: SOUND,
    holder: SOUND,
    fuseRatedA: made.mainFuseA,
    fuseOpen: false,
    leadToFrame: OPEN,
    shortInside: OPEN,
    bodyFuseOpen: false,
    plusLead: { ...lead, lengthM: made.plusLeadM },
    plusCopper: WHOLE,
    terminal: CLAMP,
    groundLead: { ...lead, lengthM: GROUND_LEAD_M },
    groundRing: LUG,
    minusRing: LUG,
    remoteSource: made.turnOn === 'wire' ? 'switched' : 'none',
    remoteSourceOhm: 10,
    remotePin: SOUND,
    remoteWire: SOUND,
    turnOn: made.turnOn,
    lampBelow: 'off',
    senseV: 0.075,
    sleepsInQuiet: false,
    level: made.input,
    converter: line && rig.unitKind === 'factory' && made.turnOn !== 'dc' ? 'works' : 'none',
    inputs: perCorner((corner) =>
      !drivesCorner(made, corner) || (twoInputs && axleOf(corner) === 'rear')
        ? null
        : sharesFront
          ? inFrontOf(corner)
          : corner,
    ),
    inputPlug: perCorner(() => SOUND_PAIR),
    // An amplifier that waits for DC gets it: its line-level lead is then plain wire from an output that has it.
    passesDc: !line || made.turnOn === 'dc',
    inputMode: twoInputs ? 'two' : 'four',
    inputLimitV: line ? Math.max(INPUT_LIMIT_LINE_V, 1.1 * loudestV) : INPUT_LIMIT_SPEAKER_V,
    gainRatio: { front: gainRatio, rear: gainRatio },
    highpassHz: HIGHPASS_HZ,
    bassBoostDb: 0,
    deadChannels: [],
    roughChannels: [],
    outputDcV: 0,
    protectsAlone: false,
    coolsBadly: false,
  };
}

/** The middle of the band in which a healthy coil lies. */
export const COIL_RATIO = (COIL_LOWEST_RATIO + COIL_HIGHEST_RATIO) / 2;

const healthyRun = (rig: ValuedRig): Run => ({
  wire: { lengthM: rig.rearRunM, sectionM2: rig.rearRunM2 },
  joint: SOUND_PAIR,
  second: WHOLE,
  dock: SOUND,
  lidLead: SOUND,
  toFrame: OPEN,
  acrossPair: OPEN,
  reversed: false,
});

const ratedOhmAt = (rig: ValuedRig, corner: Corner): number =>
  axleOf(corner) === 'rear' ? rig.rearRatedOhm : rig.frontRatedOhm;

/** What hangs in a corner of this build, or something of other ohms in its place. */
export const healthySpeaker = (rig: ValuedRig, corner: Corner, ratedOhm = ratedOhmAt(rig, corner)): Speaker => {
  const rear = axleOf(corner) === 'rear';
  const coilOhm = COIL_RATIO * ratedOhm;
  const driver = driverOf(rig, corner);
  const amp = driver === 'unit' ? undefined : rig.amps[driver];
  // The most that its amplifier can put into it: whoever fitted it has compared the papers.
  const drivenW =
    amp && coilOhm > 0
      ? powerW({ levelV: levelV({ powerW: amp.powerW, loadOhm: amp.ratedOhm }), loadOhm: coilOhm })
      : 0;
  return {
    coilOhm,
    braid: SOUND,
    count: rear ? rig.rearPerChannel : 1,
    wiring: rear ? rig.rearWiring : 'single',
    ratedW: Math.max(SPEAKER_W, drivenW),
    scrapes: 'never',
    gives: 'sound',
    leakDb: 0,
    bareTweeter: false,
  };
};

/** A bike without a fault. What nobody knows of it is typical. */
export function healthyWorld(described: Rig): World {
  const rig = valuedRig(described);
  const internalOhm = BATTERY_OHM_AH / rig.batteryAh;
  return {
    rig,
    supply: {
      openV: rig.supplyOffV + (BASE_A.off + UNIT_AWAKE_A) * internalOhm,
      surfaceV: 0,
      batteryC: 20,
      internalOhm,
      acceptOhm: ACCEPT_OHM_AH / rig.batteryAh,
      capacityRatio: 1,
      regulatorV: rig.supplyRunningV,
      idleA: rig.chargingIdleA,
      cruiseA: rig.chargingCruiseA,
      rippleV: 0.1,
      bikeRing: SOUND,
      sharedScrew: null,
      cutOffV: null,
      baseA: BASE_A,
      asleepA: 0.01,
    },
    unit: {
      alive: true,
      fuseOpen: false,
      hung: false,
      neverSleeps: false,
      mutedByLine: false,
      permanent: SOUND,
      switched: SOUND,
      ground: SOUND,
      rearOn: rig.rearFitted === 'yes' || rig.deliveredWith === 'four',
      profile: fittingShape(rig),
      deadChannels: [],
      plug: perCorner(() => SOUND_PAIR),
      rearPairs: 'own',
      toGround: perCorner(() => OPEN),
      restRatio: REST_RATIO,
      restsWhenOff: true,
      levelRatio: perCorner(() => 1),
      residueV: 0,
      outputDcV: perCorner(() => 0),
      protectsAlone: false,
    },
    settings: {
      fader: 0,
      balance: 0,
      rearControlRatio: 1,
      bassDb: 0,
      paused: false,
      muted: false,
      target: 'speakers',
      speedVolumeDb: 0,
      topVolumeRatio: topCleanVolume(rig),
    },
    phone: {
      cableHasData: true,
      port: SOUND,
      permitted: true,
      softwareAgrees: true,
      needsHeadset: false,
      offersMirroring: true,
      bassDb: 0,
      callMode: false,
    },
    amps: rig.amps.map((amp) => healthyAmp(rig, amp)),
    about: mainAmp(rig),
    runs: perCorner(() => healthyRun(rig)),
    speakers: perCorner((corner) => healthySpeaker(rig, corner)),
    noises: [],
    maskedBassDb: 0,
    trimRattles: [],
    history: 'unknown',
  };
}
