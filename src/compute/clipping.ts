import { gainFromVoltageRatioDb, voltageRatio } from './decibel.ts';
import { requireWithin } from './require.ts';

/** What a clipped sine is made of. Volts are over the clipping level, power over that of the largest clean sine. */
export type ClippedSine = {
  rmsRatio: number;
  fundamentalRatio: number;
  thdOfFundamentalRatio: number;
  thdOfTotalRatio: number;
  powerRatio: number;
  crestDb: number;
  averageReadingRatio: number;
};

/** `a`: the sine's peak over the clipping level. `t`: the angle at which it meets that level. */
function overdriven(overdriveDb: number): { a: number; t: number } {
  requireWithin({ overdriveDb }, 0, 100);
  const a = voltageRatio({ gainDb: overdriveDb });
  return { a, t: Math.asin(1 / a) };
}

/**
 * A sine cut off hard at a level it exceeds by `overdriveDb`: RMS, fundamental, distortion, power and crest factor.
 *
 * Source: Fourier series of x = clip(a sin t, ±1). The total distortion exists in two forms: against the fundamental,
 * as texts have it, and against the total, as IEC 60268-3, 15.12.3.2 e) has it; they part as clipping grows.
 * Valid: 0 to 100 dB; at 0 the sine is whole, at 100 it is a square to within rounding. A real output clips softer and
 * its supply sags, so it gives less power than this.
 * @throws {RangeError} if the overdrive is not from 0 to 100 dB.
 */
export function clippedSine({ overdriveDb }: { overdriveDb: number }): ClippedSine {
  const { a, t } = overdriven(overdriveDb);
  const fundamentalRatio = (2 / Math.PI) * (a * t + Math.sqrt(1 - 1 / a ** 2));
  const meanSquare = (2 / Math.PI) * (a ** 2 * (t / 2 - Math.sin(2 * t) / 4) + Math.PI / 2 - t);
  const rmsRatio = Math.sqrt(meanSquare);
  const harmonicsSquare = Math.max(0, 2 * meanSquare - fundamentalRatio ** 2);
  return {
    rmsRatio,
    fundamentalRatio,
    thdOfFundamentalRatio: Math.sqrt(harmonicsSquare) / fundamentalRatio,
    thdOfTotalRatio: Math.sqrt(harmonicsSquare / (2 * meanSquare)),
    powerRatio: 2 * meanSquare,
    crestDb: gainFromVoltageRatioDb({ voltageRatio: 1 / rmsRatio }),
    averageReadingRatio: averageReadingRatio({ overdriveDb }),
  };
}

/**
 * What a plain meter shows for it, over the clipping level: the mean of |x| times π / (2√2), the factor that makes such
 * a meter right on a sine. On a square it shows 1.11 of the peak.
 *
 * Source: Lessons In Electric Circuits, AC vol., "Measurements of AC magnitude". Valid: as `clippedSine`, and within
 * the meter's band: one that loses the harmonics shows less.
 * @throws {RangeError} if the overdrive is not from 0 to 100 dB.
 */
export function averageReadingRatio({ overdriveDb }: { overdriveDb: number }): number {
  const { a, t } = overdriven(overdriveDb);
  return (a * (1 - Math.cos(t)) + Math.PI / 2 - t) / Math.SQRT2;
}
