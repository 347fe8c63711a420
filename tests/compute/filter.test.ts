import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Coefficients, highpass, magnitudeDb, peaking, peakingDb } from '../../src/compute/filter.ts';
import { expectClose, expectDb } from './close.ts';
import { evenly } from './evenly.ts';

/*
 * W3C Web Audio API, BiquadFilterNode, "Filters characteristics". The tables hold the gain at 0.1, 0.25, 0.5, 1, 2, 4
 * and 10 times the filter's frequency, as two other implementations of the same formulas give them to four decimals.
 */
const TIMES = [0.1, 0.25, 0.5, 1, 2, 4, 10];
const PRINTED_DB = 1e-4;

function expectTable(coefficients: Coefficients, cornerHz: number, rateHz: number, tableDb: readonly number[]): void {
  TIMES.forEach((times, column) => {
    const gain = magnitudeDb({ coefficients, frequencyHz: times * cornerHz, sampleRateHz: rateHz });
    expectDb(gain, tableDb[column] ?? NaN, PRINTED_DB);
  });
}

const corner = fc.double({ min: 10, max: 5000, noNaN: true });
const gain = evenly(-20, 20);
const sharpness = fc.double({ min: 0.3, max: 8, noNaN: true });

describe('peaking', () => {
  it.each([
    [48_000, 1000, 1, 6, [0.0652, 0.423, 1.8794, 6, 1.866, 0.4053, 0.0476]],
    [48_000, 100, 0.7, -6, [-0.1317, -0.7995, -2.8592, -6, -2.8591, -0.7992, -0.1313]],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the table was made with 1.414, not with the root of 2
    [44_100, 63, 1.414, 4, [0.021, 0.1418, 0.7407, 4, 0.7407, 0.1417, 0.021]],
  ])('follows the W3C bell at %i Hz sampling, centre %i Hz, Q %f, %d dB', (rateHz, centreHz, q, gainDb, tableDb) => {
    expectTable(peaking({ centreHz, q, gainDb, sampleRateHz: rateHz }), centreHz, rateHz, tableDb);
  });
  it('gives the W3C coefficients, divided by a0, for 1 kHz, Q 1, +6 dB', () => {
    const { b0, b1, b2, a1, a2 } = peaking({ centreHz: 1000, q: 1, gainDb: 6 });
    expectClose(b0, 1.043953086990335, 1e-12);
    expectClose(b1, -1.8953207239365961, 1e-12);
    expectClose(b2, 0.8677222847598566, 1e-12);
    expectClose(a1, -1.8953207239365961, 1e-12);
    expectClose(a2, 0.9116753717501915, 1e-12);
  });
  it('cuts by as much as it boosts when the sign of the gain changes', () => {
    fc.assert(
      fc.property(corner, sharpness, gain, corner, (centreHz, q, gainDb, frequencyHz) => {
        const boost = peakingDb({ frequencyHz, centreHz, q, gainDb });
        expectDb(boost + peakingDb({ frequencyHz, centreHz, q, gainDb: -gainDb }), 0, 1e-6);
      }),
    );
  });
  it('refuses a centre at half the sample rate, a Q of 0 and a gain without end', () => {
    const bell = { centreHz: 80, q: 1, gainDb: 13 };
    expect(() => peaking({ ...bell, centreHz: 24_000 })).toThrow(
      /^frequencyHz must be below half of sampleRateHz \(48000\), got 24000$/,
    );
    expect(() => peaking({ ...bell, centreHz: 23_999 })).not.toThrow();
    expect(() => peaking({ ...bell, centreHz: 0 })).toThrow(/^frequencyHz must be finite and above 0, got 0$/);
    expect(() => peaking({ ...bell, q: 0 })).toThrow(/^q must be finite and above 0, got 0$/);
    expect(() => peaking({ ...bell, gainDb: Infinity })).toThrow(/^gainDb must be finite, got Infinity$/);
  });
});

describe('peakingDb', () => {
  // Chromium 156, BiquadFilterNode.getFrequencyResponse, 48 kHz; it computes in single precision.
  it('gives what a browser gives for the 13 dB bass boost: 4.338, 13.000 and 0.727 dB at 40, 80 and 400 Hz', () => {
    const boost = { centreHz: 80, q: 1, gainDb: 13 };
    expectDb(peakingDb({ ...boost, frequencyHz: 40 }), 4.338, 1e-3);
    expectDb(peakingDb({ ...boost, frequencyHz: 80 }), 13, 1e-3);
    expectDb(peakingDb({ ...boost, frequencyHz: 400 }), 0.727, 1e-3);
  });
  it('gives the whole gain at the centre, whatever the Q and the sample rate', () => {
    fc.assert(
      fc.property(corner, sharpness, gain, fc.constantFrom(44_100, 48_000, 96_000), (centreHz, q, gainDb, rateHz) => {
        expectDb(peakingDb({ frequencyHz: centreHz, centreHz, q, gainDb, sampleRateHz: rateHz }), gainDb, 1e-6);
      }),
    );
  });
});

describe('highpass', () => {
  it.each([
    ['Butterworth', 48_000, 80, -3.0103, [-40.0006, -24.0995, -12.3046, -3.0103, -0.2633, -0.0169, -0.0004]],
    ['humped', 48_000, 80, 0, [-39.9569, -23.8203, -11.1396, 0, 0.9017, 0.2622, 0.0431]],
    ['strongly humped', 48_000, 80, 3, [-39.935, -23.6741, -10.4159, 3, 1.6253, 0.4084, 0.065]],
    ['Butterworth', 44_100, 100, -3.0103, [-40.0007, -24.0996, -12.3047, -3.0103, -0.2632, -0.0169, -0.0004]],
  ])('follows the W3C %s high-pass at %i Hz sampling, %i Hz, Q %d dB', (_, rateHz, cornerHz, qDb, tableDb) => {
    expectTable(highpass({ cornerHz, qDb, sampleRateHz: rateHz }), cornerHz, rateHz, tableDb);
  });
  it('is at its Q, in decibels, at the corner: 0 dB there is not the Butterworth case', () => {
    fc.assert(
      fc.property(corner, evenly(-10, 10), (cornerHz, qDb) => {
        const atCorner = magnitudeDb({ coefficients: highpass({ cornerHz, qDb }), frequencyHz: cornerHz });
        expectDb(atCorner, qDb, 1e-6);
      }),
    );
  });
  it('has a hump of 1.25 dB when Q is 0 dB (worked by hand: Q = 1 peaks at 2/√3)', () => {
    const coefficients = highpass({ cornerHz: 80, qDb: 0 });
    const gains = Array.from({ length: 400 }, (_, hz) => magnitudeDb({ coefficients, frequencyHz: 20 + hz }));
    expectDb(Math.max(...gains), 20 * Math.log10(2 / Math.sqrt(3)), 1e-3);
  });
  it('refuses a Q without end', () => {
    expect(() => highpass({ cornerHz: 80, qDb: -Infinity })).toThrow(/^qDb must be finite, got -Infinity$/);
  });
});

describe('magnitudeDb', () => {
  it('gives 0 dB everywhere for a filter that does nothing', () => {
    fc.assert(
      fc.property(corner, (frequencyHz) => {
        expectDb(magnitudeDb({ coefficients: { b0: 1, b1: 0, b2: 0, a1: 0, a2: 0 }, frequencyHz }), 0, 1e-9);
      }),
    );
  });
  it('refuses 0 Hz, where a high-pass has no decibels, and half the sample rate', () => {
    const coefficients = highpass({ cornerHz: 80, qDb: 0 });
    expect(() => magnitudeDb({ coefficients, frequencyHz: 0 })).toThrow(
      /^frequencyHz must be finite and above 0, got 0$/,
    );
    expect(() => magnitudeDb({ coefficients, frequencyHz: 22_050, sampleRateHz: 44_100 })).toThrow(
      /^frequencyHz must be below half of sampleRateHz \(44100\), got 22050$/,
    );
  });
});
