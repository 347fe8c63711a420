import { voltageRatio } from '../compute/decibel.ts';
import { largestFuseA } from '../compute/fuse.ts';
import { gainTargetV } from '../compute/gain.ts';
import { BRIDGE_LOSS_UNLOADED_V, cleanOutputV, FULL_STEP_V } from '../compute/level.ts';
import { awgSectionM2 } from '../compute/wire.ts';
import { axleOf, CORNERS, type Corner } from '../rig/corner.ts';
import { CLAD_RATIO } from './elements/wire.ts';
import { COIL_RATIO } from './healthy.ts';
import { togetherOhm } from './hear.ts';
import { sound } from './repair/sound.ts';
import { type Amp, isJoined, type World } from './state.ts';
import { driverOf, isFitted } from './valued-rig.ts';

/** One way in which a repair hurts somebody or something: what was sound before, or nobody's business, is wrong after it. */
export interface Harm {
  readonly id: string;
  readonly says: string;
  does(before: World, after: World): boolean;
}

/* Fuses and leads. */

/** The thinnest lead that has a fuse in the table. */
const THINNEST_M2 = awgSectionM2(18);
/** The largest fuse that protects a lead: none for one that is thinner than any in the table. */
function carriesA({ plusLead }: Amp): number {
  const { sectionM2, metal } = plusLead;
  // Aluminium under copper carries what copper of its resistance carries.
  const copperM2 = metal === 'clad' ? sectionM2 / CLAD_RATIO : sectionM2;
  return copperM2 < THINNEST_M2 ? 0 : largestFuseA({ sectionM2: copperM2 });
}
const isAboveLead = (amp: Amp): boolean => amp.fuseRatedA > carriesA(amp);
const newFuse = (before: Amp, after: Amp): boolean =>
  before.fuseRatedA !== after.fuseRatedA || (before.fuseOpen && !after.fuseOpen);
const newLead = (before: Amp, after: Amp): boolean => before.plusLead !== after.plusLead;

/** Whether it is so of an amplifier, before and after. */
const anyAmp =
  (is: (before: Amp, after: Amp) => boolean) =>
  (before: World, after: World): boolean =>
    after.amps.some((amp, i) => {
      const was = before.amps[i];
      return was !== undefined && is(was, amp);
    });

/* Loads. */

/** What a channel of a head unit is made for. Common practice, no published source. */
const UNIT_RATED_OHM = 4;
/** Coils of one rating differ by so much, and are none too few for it. */
const TOO_FEW_RATIO = 0.85;

/** Rated ohms together of the speakers that hang on a channel. */
const ratedOhm = ({ speakers }: World, corner: Corner): number => togetherOhm(speakers[corner]) / COIL_RATIO;
/** The least that its channel is rated for. A build that hung less on its head unit from the start is taken as it is. */
function leastOhm(world: World, corner: Corner): number {
  const driver = driverOf(world.rig, corner);
  return driver === 'unit'
    ? Math.min(UNIT_RATED_OHM, ratedOhm(sound(world), corner))
    : (world.rig.amps[driver]?.ratedOhm ?? 0);
}

/* Levels. */

/** An amplifier driven this far past its full output clips for good: 1 dB, a distortion of 5 %. */
const CLIPS_RATIO = voltageRatio({ gainDb: 1 });

/** The loudest that the stored profile sends, bass included where the amplifier does not make up for a boost itself. */
function loudestV({ rig, unit }: World, boosted: boolean): number {
  const gainDb = unit.profile.levelDb + (boosted ? unit.profile.boostDb : 0);
  const mostV = cleanOutputV({ supplyV: rig.supplyRunningV, lossV: BRIDGE_LOSS_UNLOADED_V });
  return Math.min(FULL_STEP_V * voltageRatio({ gainDb }), mostV);
}

interface Drive {
  readonly gain: number;
  /** How far the loudest step drives it past its full output; below 1 it stays under. */
  readonly pastFullRatio: number;
}
/** How a corner's amplifier is driven; nothing for a corner without one. */
function driveAt(world: World, corner: Corner, boost: 'with boost' | 'without'): Drive | null {
  const driver = driverOf(world.rig, corner);
  const [amp, made] = driver === 'unit' ? [] : [world.amps[driver], world.rig.amps[driver]];
  if (!amp || !made || !isFitted(world.rig, corner)) return null;
  const gain = amp.gainRatio[axleOf(corner)];
  const from = amp.inputs[corner];
  if (from && axleOf(from) === 'rear' && !world.unit.rearOn) return { gain, pastFullRatio: 0 };
  const inputV = loudestV(world, boost === 'with boost' && made.needs === 'any');
  return { gain, pastFullRatio: (gain * inputV) / gainTargetV({ powerW: made.powerW, loadOhm: made.ratedOhm }) };
}

/** Whether a corner is now driven into clipping that a sound bike of this build does not have. */
const drivenTooFar =
  (boost: 'with boost' | 'without', gainHas: 'risen' | 'not moved') => (before: World, after: World) =>
    CORNERS.some((corner) => {
      const [was, is, right] = [before, after, sound(after)].map((world) => driveAt(world, corner, boost));
      if (!was || !is || !right) return false;
      const moved = gainHas === 'risen' ? is.gain > was.gain : is.gain === was.gain;
      const most = CLIPS_RATIO * Math.max(1, right.pastFullRatio, was.pastFullRatio);
      return moved && is.pastFullRatio > most;
    });

const needsUnaltered = ({ rig }: World): boolean =>
  CORNERS.some((corner) => {
    const driver = driverOf(rig, corner);
    return isFitted(rig, corner) && driver !== 'unit' && rig.amps[driver]?.needs === 'unaltered';
  });

/* Volts where none should be. */

const wiresOnGround = ({ unit, runs }: World): readonly Corner[] =>
  CORNERS.filter((corner) => isJoined(unit.toGround[corner]) || isJoined(runs[corner].toFrame));
const isLiveOnFrame = ({ leadToFrame, fuseOpen }: Amp): boolean => isJoined(leadToFrame) && !fuseOpen;

/** Every way to do harm that the model can see. What makes them harmful: common practice, no published source. */
export const HARMS: readonly Harm[] = [
  {
    id: 'fuse-above-lead',
    says: 'The main fuse is larger than its plus lead carries: the lead burns before it opens.',
    does: anyAmp((before, after) => newFuse(before, after) && isAboveLead(after)),
  },
  {
    id: 'lead-below-fuse',
    says: 'The plus lead is thinner than the fuse in it asks for.',
    does: anyAmp((before, after) => newLead(before, after) && isAboveLead(after)),
  },
  {
    id: 'load-below-rating',
    says: 'A channel has less ohms on it than it is rated for.',
    does: (before, after) =>
      CORNERS.some(
        (corner) =>
          isFitted(after.rig, corner) &&
          before.speakers[corner] !== after.speakers[corner] &&
          ratedOhm(after, corner) < TOO_FEW_RATIO * leastOhm(after, corner),
      ),
  },
  {
    id: 'lowered-into-unaltered',
    says: 'An amplifier that needs the unaltered output gets a lowered one.',
    does: (before, after) =>
      needsUnaltered(after) &&
      (after.unit.profile.levelDb < before.unit.profile.levelDb ||
        after.unit.profile.boostDb < before.unit.profile.boostDb),
  },
  {
    id: 'full-into-lowered',
    says: 'More level goes into an amplifier whose gain was set for less: it clips, the bass first.',
    does: drivenTooFar('with boost', 'not moved'),
  },
  {
    id: 'clips-by-gain',
    says: 'The gain is set so high that the amplifier clips at the loudest clean step.',
    does: drivenTooFar('without', 'risen'),
  },
  {
    id: 'output-on-ground',
    says: 'A wire of a bridge output is joined to ground: half the supply is shorted there.',
    does: (before, after) => wiresOnGround(after).some((corner) => !wiresOnGround(before).includes(corner)),
  },
  {
    id: 'lead-live-on-frame',
    says: 'The plus lead lies on the frame behind a fuse that holds.',
    does: anyAmp((before, after) => isLiveOnFrame(after) && !isLiveOnFrame(before)),
  },
  {
    id: 'remote-always-live',
    says: 'The remote wire is live with the key off, and the amplifier empties the battery.',
    does: anyAmp((before, after) => after.remoteSource === 'permanent' && before.remoteSource !== 'permanent'),
  },
];

/** What repairs did to a bike that must never be done to one. Empty where they harm nothing. */
export const harmsOf = (before: World, after: World): readonly Harm[] =>
  HARMS.filter((harm) => harm.does(before, after));
