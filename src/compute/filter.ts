import { requireFinite, requirePositive } from './require.ts';

/*
 * Source of this file: W3C Web Audio API (Recommendation 2021-06-17), BiquadFilterNode, "Filters characteristics".
 * What we compute is therefore what a browser does with the same settings.
 */

/** The rate at which browsers usually run a filter. */
export const FILTER_SAMPLE_RATE_HZ = 48_000;

/** A second-order filter, every coefficient divided by a0, so that a0 = 1. They are pure numbers. */
export type Coefficients = { b0: number; b1: number; b2: number; a1: number; a2: number };

function normalised(b0: number, b1: number, b2: number, a0: number, a1: number, a2: number): Coefficients {
  return { b0: b0 / a0, b1: b1 / a0, b2: b2 / a0, a1: a1 / a0, a2: a2 / a0 };
}

function angle(frequencyHz: number, sampleRateHz: number): { cos: number; sin: number } {
  requirePositive({ frequencyHz, sampleRateHz });
  if (frequencyHz >= sampleRateHz / 2) {
    throw new RangeError(`frequencyHz must be below half of sampleRateHz (${sampleRateHz}), got ${frequencyHz}`);
  }
  const w0 = (2 * Math.PI * frequencyHz) / sampleRateHz;
  return { cos: Math.cos(w0), sin: Math.sin(w0) };
}

type Peaking = { centreHz: number; q: number; gainDb: number; sampleRateHz?: number };
type HighPass = { cornerHz: number; qDb: number; sampleRateHz?: number };

/**
 * A bell: `gainDb` at its centre, nothing far away; a higher Q makes it narrower. A = 10^(gain / 40).
 *
 * Valid: centre below half the sample rate. Towards it the bell leans, since the upper side is squeezed.
 * @throws {RangeError} if the centre is not above 0 and below half the rate, Q not above 0, or the gain not finite.
 */
export function peaking({ centreHz, q, gainDb, sampleRateHz = FILTER_SAMPLE_RATE_HZ }: Peaking): Coefficients {
  requirePositive({ q });
  requireFinite({ gainDb });
  const { cos, sin } = angle(centreHz, sampleRateHz);
  const a = 10 ** (gainDb / 40);
  const alpha = sin / (2 * q);
  return normalised(1 + alpha * a, -2 * cos, 1 - alpha * a, 1 + alpha / a, -2 * cos, 1 - alpha / a);
}

/**
 * A high-pass of 12 dB per octave. Its Q is in decibels, and is the gain at the corner: −3.0103 dB is the Butterworth
 * case, and 0 dB, which looks like "plain", already has a hump of 1.25 dB above the corner.
 *
 * Valid: corner below half the sample rate.
 * @throws {RangeError} if the corner is not above 0 and below half the rate, or Q is not finite.
 */
export function highpass({ cornerHz, qDb, sampleRateHz = FILTER_SAMPLE_RATE_HZ }: HighPass): Coefficients {
  requireFinite({ qDb });
  const { cos, sin } = angle(cornerHz, sampleRateHz);
  const alpha = sin / (2 * 10 ** (qDb / 20));
  return normalised((1 + cos) / 2, -(1 + cos), (1 + cos) / 2, 1 + alpha, -2 * cos, 1 - alpha);
}

type Response = { coefficients: Coefficients; frequencyHz: number; sampleRateHz?: number };

/**
 * The gain of a filter at one frequency: 20 log10 |H(e^jω)|.
 *
 * Valid: above 0 and below half the sample rate. At 0 Hz a high-pass has no decibels at all.
 * @throws {RangeError} if the frequency is outside that.
 */
export function magnitudeDb({ coefficients, frequencyHz, sampleRateHz = FILTER_SAMPLE_RATE_HZ }: Response): number {
  const { cos, sin } = angle(frequencyHz, sampleRateHz);
  const [cos2, sin2] = [cos * cos - sin * sin, 2 * sin * cos];
  const { b0, b1, b2, a1, a2 } = coefficients;
  const above = Math.hypot(b0 + b1 * cos + b2 * cos2, b1 * sin + b2 * sin2);
  const below = Math.hypot(1 + a1 * cos + a2 * cos2, a1 * sin + a2 * sin2);
  return 20 * Math.log10(above / below);
}

/**
 * The gain of a bell at one frequency: `magnitudeDb` of `peaking`.
 *
 * @throws {RangeError} as those two.
 */
export function peakingDb({ frequencyHz, ...bell }: Peaking & { frequencyHz: number }): number {
  const { sampleRateHz = FILTER_SAMPLE_RATE_HZ } = bell;
  return magnitudeDb({ coefficients: peaking(bell), frequencyHz, sampleRateHz });
}
