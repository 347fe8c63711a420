import { powerRatio, voltageRatio } from '../compute/decibel.ts';
import { boostPowerRatio } from '../compute/headroom.ts';
import { combinedRatedOhm } from '../compute/impedance.ts';
import { BRIDGE_LOSS_LOADED_V, BRIDGE_LOSS_UNLOADED_V, cleanOutputV, powerW } from '../compute/level.ts';
import { formatQuantity } from '../compute/quantity.ts';
import { estimate, type Rig } from '../rig/rig.ts';
import type { RemedyNumber } from './verdict.ts';

/** A level across one pair of the head unit, and the power that it is into the speaker. */
export interface Level {
  readonly levelV: number;
  readonly powerW: number;
}

const into = (levelV: number, loadOhm: number): Level => ({ levelV, powerW: powerW({ levelV, loadOhm }) });

/** The rated ohms on one rear channel. Several speakers whose wiring nobody said are side by side, the usual way. */
export function rearLoadOhm(rig: Rig): number {
  const count = Math.round(estimate(rig, 'rearPerChannel').value);
  const wiring = count === 1 ? 'single' : rig.rearWiring === 'series' ? 'series' : 'parallel';
  return combinedRatedOhm({ ratedOhm: estimate(rig, 'rearRatedOhm').value, count, wiring });
}

/** Whether somebody said what hangs on a rear channel, so that a warning about it is no guess. */
export const rearLoadKnown = (rig: Rig): boolean => rig.rearRatedOhm !== undefined;

/** The loudest clean output of one channel with the engine running. */
export function fullLevel(rig: Rig, pair: 'front' | 'rear'): Level {
  const supplyV = estimate(rig, 'supplyRunningV').value;
  const loadOhm = pair === 'front' ? estimate(rig, 'frontRatedOhm').value : rearLoadOhm(rig);
  return into(cleanOutputV({ supplyV, lossV: BRIDGE_LOSS_LOADED_V }), loadOhm);
}

/** The same into an amplifier's input, which draws next to nothing. */
export const unloadedFullV = (rig: Rig): number =>
  cleanOutputV({ supplyV: estimate(rig, 'supplyRunningV').value, lossV: BRIDGE_LOSS_UNLOADED_V });

/** The same with an amplified profile: lower by what the rig says, usually 7 dB. */
export function loweredLevel(rig: Rig, pair: 'front' | 'rear'): Level {
  const full = fullLevel(rig, pair);
  const gainDb = -estimate(rig, 'loweredByDb').value;
  return { levelV: full.levelV * voltageRatio({ gainDb }), powerW: full.powerW * powerRatio({ gainDb }) };
}

/** How many times the bass power the boost of the unaltered profile is. */
export const boostPower = (rig: Rig): number => boostPowerRatio({ boostDb: estimate(rig, 'boostDb').value });

export const written = ({ levelV, powerW: w }: Level): string =>
  `${formatQuantity(levelV, 'V')} · ${formatQuantity(w, 'W', 2)}`;

/** The rows that show what an amplified profile would do to a pair that the head unit drives itself. */
export const amplifiedInstead = (rig: Rig, pair: 'front' | 'rear'): readonly RemedyNumber[] => [
  { label: 'With an amplified profile instead', value: written(loweredLevel(rig, pair)) },
  { label: 'That would be', value: `${formatQuantity(estimate(rig, 'loweredByDb').value, 'dB', 2)} quieter` },
];
