import { voltageRatio } from '../../compute/decibel.ts';
import { gainTargetV } from '../../compute/gain.ts';
import { BRIDGE_LOSS_UNLOADED_V, cleanOutputV, FULL_STEP_V, powerW } from '../../compute/level.ts';
import { axleOf, CORNERS, type Corner } from '../../rig/corner.ts';
import { sound } from '../repair/sound.ts';
import type { World } from '../state.ts';
import { driverOf, isFitted } from '../valued-rig.ts';
import type { Harm } from './harm.ts';

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
  /** The volts of its full output. */
  readonly fullV: number;
  /** How far the loudest step drives it past its full output; below 1 it stays under. */
  readonly pastFullRatio: number;
}
/** How a corner's amplifier is driven; nothing for a corner without one. */
function driveAt(world: World, corner: Corner, boost: 'with boost' | 'without'): Drive | null {
  const driver = driverOf(world.rig, corner);
  const [amp, made] = driver === 'unit' ? [] : [world.amps[driver], world.rig.amps[driver]];
  if (!amp || !made || !isFitted(world.rig, corner)) return null;
  const gain = amp.gainRatio[axleOf(corner)];
  const fullV = gainTargetV({ powerW: made.powerW, loadOhm: made.ratedOhm });
  const from = amp.inputs[corner];
  if (from && axleOf(from) === 'rear' && !world.unit.rearOn) return { gain, fullV, pastFullRatio: 0 };
  const inputV = loudestV(world, boost === 'with boost' && made.needs === 'any');
  return { gain, fullV, pastFullRatio: (gain * inputV) / fullV };
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

/** The watts of the loudest step in each speaker of a corner. */
function wattsEach({ speakers }: World, corner: Corner, { fullV, pastFullRatio }: Drive): number {
  const { coilOhm, count, wiring } = speakers[corner];
  const outputV = fullV * Math.min(1, pastFullRatio);
  return powerW({ levelV: wiring === 'series' ? outputV / count : outputV, loadOhm: coilOhm });
}
/** Whether a gain that has gone up puts more into a speaker than it takes and a sound bike of this build gives it. */
const overdrivesSpeaker = (before: World, after: World): boolean =>
  CORNERS.some((corner) => {
    const [was, is] = [before, after].map((world) => driveAt(world, corner, 'without'));
    if (!was || !is || is.gain <= was.gain) return false;
    return wattsEach(after, corner, is) > CLIPS_RATIO ** 2 * after.speakers[corner].ratedW;
  });

/** Levels into what cannot take them. */
export const LEVEL_HARMS: readonly Harm[] = [
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
    id: 'too-much-for-speaker',
    says: 'The gain is set to more watts than a speaker takes.',
    does: overdrivesSpeaker,
  },
];
