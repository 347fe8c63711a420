import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { durationOf, QUIET_PEAK_DBFS, TONE_DURATION_S, TONE_PEAK_DBFS, TONES, toneWav } from '../../src/sound/tone.ts';
import { evenly } from '../compute/evenly.ts';

/** Reads the bytes as any player would, without a word from the module that wrote them. */
function read(wav: Uint8Array<ArrayBuffer>) {
  const view = new DataView(wav.buffer, wav.byteOffset, wav.byteLength);
  const text = (at: number) => String.fromCharCode(...wav.subarray(at, at + 4));
  const samples = new Int16Array((wav.byteLength - 44) / 2);
  for (let i = 0; i < samples.length; i++) samples[i] = view.getInt16(44 + 2 * i, true);
  return { view, text, samples };
}

/** Amplitude of one frequency by Goertzel's recurrence, over the largest sample: one bin of a Fourier transform. */
function amplitudeRatio(samples: Int16Array, frequencyHz: number, sampleRateHz: number): number {
  const twoCos = 2 * Math.cos((2 * Math.PI * frequencyHz) / sampleRateHz);
  let [last, before] = [0, 0];
  for (const sample of samples) [last, before] = [sample / 32_767 + twoCos * last - before, last];
  return (2 * Math.sqrt(last ** 2 + before ** 2 - twoCos * last * before)) / samples.length;
}

function crossingsHz(samples: Int16Array, sampleRateHz: number): number {
  const rising: number[] = [];
  for (let i = 1; i < samples.length; i++) {
    const [from, to] = [samples[i - 1] ?? 0, samples[i] ?? 0];
    if (from < 0 && to >= 0) rising.push(i - 1 + from / (from - to));
  }
  return ((rising.length - 1) * sampleRateHz) / ((rising.at(-1) ?? 0) - (rising[0] ?? 0));
}

function rmsDbfs(samples: Int16Array): number {
  const square = samples.reduce((sum, sample) => sum + (sample / 32_767) ** 2, 0) / samples.length;
  return 10 * Math.log10(square);
}

const RATE_HZ = 44_100;
const steady = (samples: Int16Array) => samples.subarray(RATE_HZ / 2, RATE_HZ / 2 + RATE_HZ); // one second, past the fade
const tone = { durationS: 2 };

const LOUD = TONES.filter(({ peakDbfs, steps }) => peakDbfs === TONE_PEAK_DBFS && steps === 1);

describe('toneWav', () => {
  // RIFF and WAVE: Multimedia Programming Interface and Data Specifications 1.0 (1991), chapters 2 and 3.
  it('writes the header of a 16-bit mono WAVE file, little-endian', () => {
    const { view, text, samples } = read(toneWav({ ...tone, frequencyHz: 400 }));
    expect([text(0), text(8), text(12), text(36)]).toEqual(['RIFF', 'WAVE', 'fmt ', 'data']);
    expect(view.getUint32(4, true), 'what follows the first eight bytes').toBe(view.byteLength - 8);
    expect(view.getUint32(16, true), 'length of the format').toBe(16);
    expect(view.getUint16(20, true), 'linear PCM').toBe(1);
    expect(view.getUint16(22, true), 'channels').toBe(1);
    expect(view.getUint32(24, true), 'samples a second').toBe(44_100);
    expect(view.getUint32(28, true), 'bytes a second').toBe(88_200);
    expect(view.getUint16(32, true), 'bytes a sample').toBe(2);
    expect(view.getUint16(34, true), 'bits a sample').toBe(16);
    expect(view.getUint32(40, true), 'bytes of sound').toBe(2 * samples.length);
    expect(samples.length).toBe(2 * 44_100);
  });

  describe.each(LOUD)('the file $file', ({ frequencyHz }) => {
    const { samples } = read(toneWav({ frequencyHz, durationS: TONE_DURATION_S, peakDbfs: TONE_PEAK_DBFS }));
    it(`crosses zero ${frequencyHz} times a second on the way up`, () => {
      expect(Math.abs(crossingsHz(steady(samples), RATE_HZ) / frequencyHz - 1)).toBeLessThan(1e-5);
    });
    it(`holds full scale at ${frequencyHz} Hz and nothing at its harmonics`, () => {
      expect(amplitudeRatio(steady(samples), frequencyHz, RATE_HZ)).toBeCloseTo(1, 4);
      for (const n of [2, 3]) expect(amplitudeRatio(steady(samples), n * frequencyHz, RATE_HZ)).toBeLessThan(1e-4);
    });
    it('has an RMS of −3.01 dBFS, as every other of the four', () => {
      expect(rmsDbfs(steady(samples))).toBeCloseTo(-3.0103, 3);
    });
    it('peaks at full scale and not a step beyond', () => {
      const peak = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
      expect(peak).toBeLessThanOrEqual(32_767);
      expect(peak).toBeGreaterThanOrEqual(32_766);
    });
    it('lasts 20 s, begins and ends at zero, and keeps its pitch to the last second', () => {
      expect(samples.length).toBe(20 * RATE_HZ);
      expect([samples[0], samples.at(-1)]).toEqual([0, 0]);
      const last = samples.subarray(18.5 * RATE_HZ, 19.5 * RATE_HZ);
      expect(amplitudeRatio(last, frequencyHz, RATE_HZ)).toBeCloseTo(1, 4);
    });
  });

  it('rises through a quarter second fade without a jump: half way in, half the height', () => {
    const { samples } = read(toneWav({ frequencyHz: 4000, durationS: 1, fadeS: 0.25 }));
    const heightNear = (s: number) =>
      samples
        .subarray((s - 0.002) * RATE_HZ, (s + 0.002) * RATE_HZ)
        .reduce((most, x) => Math.max(most, Math.abs(x)), 0);
    expect(heightNear(0.125) / 32_767).toBeCloseTo(0.5, 1);
    expect(heightNear(0.875) / 32_767).toBeCloseTo(0.5, 1);
    expect(heightNear(0.5)).toBeGreaterThan(32_700);
    expect(heightNear(0.002) / 32_767).toBeLessThan(0.001);
  });
  it('starts upwards from zero phase', () => {
    const { samples } = read(toneWav({ frequencyHz: 400, durationS: 1, fadeS: 0 }));
    expect(samples[0]).toBe(0);
    expect(samples[1]).toBe(Math.round(32_767 * Math.sin((2 * Math.PI * 400) / 44_100)));
  });
  it('never exceeds the peak asked for, at any pitch', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 20_000 }), evenly(-40, 0), (frequencyHz, peakDbfs) => {
        const { samples } = read(toneWav({ frequencyHz, durationS: 0.2, peakDbfs }));
        const peak = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
        expect(peak).toBeLessThanOrEqual(Math.round(32_767 * 10 ** (peakDbfs / 20)));
      }),
      { numRuns: 30 },
    );
  });
  it('gives the same bytes each time', () => {
    expect(toneWav({ ...tone, frequencyHz: 80 })).toEqual(toneWav({ ...tone, frequencyHz: 80 }));
  });
  it('refuses a pitch it cannot hold, a peak above full scale and fades longer than the tone', () => {
    expect(() => toneWav({ ...tone, frequencyHz: 22_051 })).toThrow(/^frequencyHz must be from 0 to 22050, got 22051$/);
    expect(() => toneWav({ ...tone, frequencyHz: 0 })).toThrow(/^frequencyHz must be finite and above 0, got 0$/);
    expect(() => toneWav({ ...tone, frequencyHz: 80, peakDbfs: 0.1 })).toThrow(
      /^peakDbfs must be from -96 to 0, got 0.1$/,
    );
    expect(() => toneWav({ ...tone, frequencyHz: 80, fadeS: 1.1 })).toThrow(/^fadeS must be from 0 to 1, got 1.1$/);
    expect(() => toneWav({ frequencyHz: 80, durationS: 0 })).toThrow(/^durationS must be finite and above 0, got 0$/);
  });
});

/** 15 dB down is 10^(−15 / 20) = 0.178 of full scale, and 14 dB of boost, 5.01 times, leave it below 1 (definition of the decibel). */
describe('a quiet tone', () => {
  it.each(TONES.filter(({ peakDbfs }) => peakDbfs < 0))(
    'of $frequencyHz Hz holds 0.178 of full scale',
    ({ frequencyHz, peakDbfs }) => {
      const { samples } = read(toneWav({ frequencyHz, durationS: 2, peakDbfs }));
      expect(amplitudeRatio(steady(samples), frequencyHz, RATE_HZ)).toBeCloseTo(0.1778, 3);
    },
  );
  it('has room for the whole boost of an unaltered profile', () => {
    expect(10 ** ((QUIET_PEAK_DBFS + 14) / 20)).toBeLessThan(1);
  });
});

/** 3 dB are 10^(3 / 20) = 1.41254 times the volts, 18 dB 7.94328 times (definition of the decibel). */
describe('the tone in steps', () => {
  const stepped = TONES.find(({ steps }) => steps > 1) ?? expect.fail('no stepped tone');
  const { samples } = read(toneWav({ ...stepped, durationS: durationOf(stepped) }));
  /** One second out of the middle of each step. */
  const heights = Array.from({ length: 7 }, (_, i) =>
    amplitudeRatio(samples.subarray((2 * i + 0.5) * RATE_HZ, (2 * i + 1.5) * RATE_HZ), 80, RATE_HZ),
  );
  it('has seven of two seconds, each 3 dB louder, the last at full scale', () => {
    expect(samples.length).toBe(14 * RATE_HZ);
    expect(heights.at(-1)).toBeCloseTo(1, 4);
    for (const [i, height] of heights.slice(1).entries()) expect(height / (heights[i] ?? 0)).toBeCloseTo(1.41254, 3);
    expect((heights.at(-1) ?? 0) / (heights[0] ?? 1)).toBeCloseTo(7.94328, 2);
  });
  it('is a clean sine in each: what is heard beside it comes from the bike', () => {
    for (let i = 0; i < 7; i++)
      for (const n of [2, 3, 5])
        expect(
          amplitudeRatio(samples.subarray((2 * i + 0.5) * RATE_HZ, (2 * i + 1.5) * RATE_HZ), n * 80, RATE_HZ),
        ).toBeLessThan(1e-4);
  });
  it('goes from one to the next without a jump', () => {
    for (let at = 1; at < samples.length; at++)
      if (Math.abs((samples[at] ?? 0) - (samples[at - 1] ?? 0)) > 32_767 * 2 * Math.PI * (80 / RATE_HZ) * 1.05)
        expect.fail(`a jump at sample ${at}`);
  });
});

describe('TONES', () => {
  it('are the four a meter and an ear need, loud and quiet, and one in steps, each named like its file', () => {
    expect(LOUD.map(({ frequencyHz }) => frequencyHz)).toEqual([80, 400, 1000, 4000]);
    const quiet = TONES.filter(({ peakDbfs }) => peakDbfs === QUIET_PEAK_DBFS);
    expect(quiet.map(({ frequencyHz }) => frequencyHz)).toEqual([80, 400, 1000, 4000]);
    for (const { name, file } of TONES) expect(file).toBe(`${name}.wav`);
  });
});
