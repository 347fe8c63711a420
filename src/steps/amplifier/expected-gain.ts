import { gainTargetV } from '../../compute/gain.ts';
import { loweredV, unloadedFullV } from '../../rig/levels.ts';
import { ampDriving, ampEstimate } from '../../rig/rig.ts';
import type { Situation } from '../step.ts';

/** The level that the head unit sends on its speaker wires: all it has, or what an amplified profile leaves of it. */
export type SentLevel = 'full' | 'lowered';

/**
 * The gain that makes full power out of the loudest clean input on speaker wires, from the amplifier's rating and the
 * profile's level. On a line-level lead nobody knows what the converter makes of it, so there is no such figure.
 */
export function expectedGainRatio(situation: Situation, level: SentLevel): number {
  const amp = ampDriving(situation.rig, 'rear') ?? {};
  const targetV = gainTargetV({
    powerW: ampEstimate(amp, 'powerW').value,
    loadOhm: ampEstimate(amp, 'ratedOhm').value,
  });
  return targetV / (level === 'full' ? unloadedFullV(situation.rig) : loweredV(situation.rig).value);
}

/** Both gains, since nobody knows which level the profile sends until it was read. */
export const gainInWords = (situation: Situation): string =>
  `${expectedGainRatio(situation, 'full').toFixed(1)} times (full level) or ${expectedGainRatio(situation, 'lowered').toFixed(1)} times (amplified profile)`;
