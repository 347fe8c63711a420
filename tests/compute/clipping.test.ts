import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { averageReadingRatio, clippedSine } from '../../src/compute/clipping.ts';
import { expectClose, expectDb } from './close.ts';
import { evenly } from './evenly.ts';

/** The same sine cut off sample by sample: an independent way to every figure, by sums in place of closed forms. */
function sampled(overdriveDb: number) {
  const samples = 65_536;
  const sums = { square: 0, rectified: 0, fundamental: 0 };
  for (let i = 0; i < samples; i++) {
    const angle = (2 * Math.PI * i) / samples;
    const x = Math.max(-1, Math.min(1, 10 ** (overdriveDb / 20) * Math.sin(angle)));
    sums.square += x * x;
    sums.rectified += Math.abs(x);
    sums.fundamental += x * Math.sin(angle);
  }
  return {
    rmsRatio: Math.sqrt(sums.square / samples),
    meanRatio: sums.rectified / samples,
    fundamentalRatio: (2 * sums.fundamental) / samples,
  };
}

const overdrives = evenly(0, 60);

describe('clippedSine', () => {
  // Fourier series of the clipped sine, the distortion confirmed by a fast Fourier transform.
  it.each([
    [1, 1.074511, 0.760609, 0.046316, 0.046266, 2.3768, 1.15705],
    [2, 1.122397, 0.797043, 0.092499, 0.092106, 1.9704, 1.27055],
    [3, 1.15696, 0.825384, 0.133795, 0.132613, 1.6669, 1.36252],
    [6, 1.217721, 0.884, 0.232371, 0.22634, 1.071, 1.56291],
    [12, 1.259721, 0.944831, 0.35369, 0.333448, 0.4929, 1.78541],
    [20, 1.271114, 0.978528, 0.430397, 0.395335, 0.1885, 1.91503],
  ])('splits a sine driven %i dB over', (overdriveDb, fundamental, rms, thdF, thdR, crestDb, power) => {
    const clipped = clippedSine({ overdriveDb });
    expectClose(clipped.fundamentalRatio, fundamental, 1e-5);
    expectClose(clipped.rmsRatio, rms, 1e-5);
    expectClose(clipped.thdOfFundamentalRatio, thdF, 1e-4);
    expectClose(clipped.thdOfTotalRatio, thdR, 1e-4);
    expectDb(clipped.crestDb, crestDb, 1e-4);
    expectClose(clipped.powerRatio, power, 1e-5);
  });
  it('leaves a sine whole at 0 dB: crest factor 3.01 dB, no distortion', () => {
    const whole = clippedSine({ overdriveDb: 0 });
    expectClose(whole.fundamentalRatio, 1);
    expectClose(whole.rmsRatio, Math.SQRT1_2);
    expectDb(whole.crestDb, 3.0103, 1e-4);
    expectClose(whole.thdOfFundamentalRatio, 0, 1e-6);
    expectClose(whole.powerRatio, 1);
  });
  it('ends as a square at 100 dB: twice the power, 48.3 % of the fundamental, 43.5 % of the total', () => {
    const square = clippedSine({ overdriveDb: 100 });
    expectClose(square.powerRatio, 2, 1e-4);
    expectClose(square.thdOfFundamentalRatio, 0.483426, 1e-4);
    expectClose(square.thdOfTotalRatio, 0.435236, 1e-4);
    expectClose(square.fundamentalRatio, 4 / Math.PI, 1e-4);
    expectDb(square.crestDb, 0, 1e-3);
  });
  // Data sheets of amplifier chips take the power at 10 % distortion as 1.25 times that at 0.5 %.
  it('gives 1.25 times the power at 10 % distortion as at 0.5 %, as data sheets of amplifiers have it', () => {
    const [ten, half] = [clippedSine({ overdriveDb: 2.17314 }), clippedSine({ overdriveDb: 0.13925 })];
    expectClose(ten.thdOfFundamentalRatio, 0.1, 1e-4);
    expectClose(half.thdOfFundamentalRatio, 0.005, 1e-3);
    expectClose(ten.powerRatio / half.powerRatio, 1.25, 3e-3);
  });
  it('agrees with the sine cut off sample by sample', () => {
    fc.assert(
      fc.property(overdrives, (overdriveDb) => {
        const clipped = clippedSine({ overdriveDb });
        const counted = sampled(overdriveDb);
        expectClose(clipped.rmsRatio, counted.rmsRatio, 1e-4);
        expectClose(clipped.fundamentalRatio, counted.fundamentalRatio, 1e-4);
        expectClose(clipped.averageReadingRatio, (counted.meanRatio * Math.PI) / (2 * Math.SQRT2), 1e-4);
      }),
      { numRuns: 20 },
    );
  });
  it('distorts more against the fundamental than against the total, and both grow with overdrive', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 50, noNaN: true }), (overdriveDb) => {
        const [less, more] = [clippedSine({ overdriveDb }), clippedSine({ overdriveDb: overdriveDb + 1 })];
        expect(less.thdOfFundamentalRatio).toBeGreaterThan(less.thdOfTotalRatio);
        expect(more.thdOfTotalRatio).toBeGreaterThan(less.thdOfTotalRatio);
      }),
    );
  });
  it('refuses a sine that is not driven over, and one beyond 100 dB', () => {
    expect(() => clippedSine({ overdriveDb: -0.1 })).toThrow(/^overdriveDb must be from 0 to 100, got -0.1$/);
    expect(() => clippedSine({ overdriveDb: 100.1 })).toThrow(/^overdriveDb must be from 0 to 100, got 100.1$/);
    expect(() => clippedSine({ overdriveDb: NaN })).toThrow(/^overdriveDb must be from 0 to 100, got NaN$/);
  });
});

describe('averageReadingRatio', () => {
  // Form factor of a sine, π / (2√2) = 1.1107: Lessons In Electric Circuits, AC vol., "Measurements of AC magnitude".
  it('shows the RMS of a whole sine and 1.11 of the peak of a square', () => {
    expectClose(averageReadingRatio({ overdriveDb: 0 }), Math.SQRT1_2);
    expectClose(averageReadingRatio({ overdriveDb: 100 }), 1.1107, 1e-4);
  });
  it('reads at least the true RMS, so a clipped output looks louder than it is', () => {
    fc.assert(
      fc.property(overdrives, (overdriveDb) => {
        expect(averageReadingRatio({ overdriveDb })).toBeGreaterThanOrEqual(
          clippedSine({ overdriveDb }).rmsRatio - 1e-12,
        );
      }),
    );
  });
  it('refuses a negative overdrive', () => {
    expect(() => averageReadingRatio({ overdriveDb: -1 })).toThrow(/^overdriveDb must be from 0 to 100, got -1$/);
  });
});
