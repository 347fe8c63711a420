import { describe, expect, it } from 'vitest';
import { SIDE_PEAK_DBFS, SIDE_TONE_S, SIDE_TONES, sideToneWav } from '../../src/sound/side-tone.ts';

const RATE_HZ = 44_100;

/** Reads the bytes as any player would: of two channels the left one comes first in every sample. */
function channelsOf(wav: Uint8Array<ArrayBuffer>) {
  const view = new DataView(wav.buffer);
  const at = (channel: number) =>
    Int16Array.from({ length: (wav.byteLength - 44) / 4 }, (_, i) => view.getInt16(44 + 4 * i + 2 * channel, true));
  return { view, left: at(0), right: at(1) };
}
const peakOf = (samples: Int16Array) => samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);

/** How often in a second it begins after a silence of a twentieth of a second. */
function pulsesIn(samples: Int16Array): number {
  let [count, quiet] = [0, RATE_HZ];
  for (const sample of samples.subarray(0, RATE_HZ)) {
    if (Math.abs(sample) > 200) {
      if (quiet > RATE_HZ / 20) count += 1;
      quiet = 0;
    } else quiet += 1;
  }
  return count;
}

// RIFF and WAVE: Multimedia Programming Interface and Data Specifications 1.0 (1991), chapters 2 and 3.
describe.each(SIDE_TONES)('the tone $file', (tone) => {
  const { view, left, right } = channelsOf(sideToneWav(tone));
  it('is a WAVE file of two channels', () => {
    expect([view.getUint16(22, true), view.getUint32(28, true), view.getUint16(32, true)]).toEqual([2, 176_400, 4]);
    expect(view.getUint32(40, true)).toBe(view.byteLength - 44);
    expect(left.length).toBe(SIDE_TONE_S * RATE_HZ);
  });
  it('plays on its own side alone, and says which by its pulses', () => {
    const on = { left: [true, false], right: [false, true], 'both-sides': [true, true] }[tone.name];
    expect([peakOf(left) > 0, peakOf(right) > 0]).toEqual(on);
    const heard = tone.name === 'right' ? right : left;
    expect(pulsesIn(heard)).toBe({ left: 1, right: 2, 'both-sides': 3 }[tone.name]);
  });
  // 12 dB down is 10^(−12 / 20) = 0.2512 of full scale (definition of the decibel).
  it('peaks 12 dB under full scale', () => {
    expect(SIDE_PEAK_DBFS).toBe(-12);
    expect(Math.max(peakOf(left), peakOf(right)) / 32_767).toBeCloseTo(0.2512, 3);
  });
  it('jumps nowhere: from one sample to the next by no more than the tone itself', () => {
    const heard = tone.name === 'right' ? right : left;
    const most = 0.2512 * 32_767 * 2 * Math.PI * (400 / RATE_HZ);
    let jump = 0;
    for (let i = 1; i < heard.length; i++) jump = Math.max(jump, Math.abs((heard[i] ?? 0) - (heard[i - 1] ?? 0)));
    expect(jump).toBeLessThan(1.05 * most);
  });
});
