import { voltageRatio } from '../compute/decibel.ts';
import { HEADER_BYTES, writeHeader } from './tone.ts';

/** Loud enough to be told from what else plays, and 12 dB under the test tones: it is listened to with an ear at a grille. */
export const SIDE_PEAK_DBFS = -12;
export const SIDE_TONE_S = 8;
const SIDE_TONE_HZ = 400;

/** Tones that name a side: on the left channel alone one pulse a second, on the right alone two, on both three. */
export const SIDE_TONES = [
  { name: 'left', file: 'left.wav', pulses: 1, says: 'Left only: one pulse a second' },
  { name: 'right', file: 'right.wav', pulses: 2, says: 'Right only: two pulses a second' },
  { name: 'both-sides', file: 'both-sides.wav', pulses: 3, says: 'Both sides: three pulses a second' },
] as const;
export type SideTone = (typeof SIDE_TONES)[number];

const SAMPLE_RATE_HZ = 44_100;
const FULL_SCALE = 32_767;
/** Of a pulse, and from the start of one to the start of the next. */
const PULSE_S = 0.12;
const APART_S = 0.24;
const FADE_S = 0.01;

/** The height of the pulses at a time, from 0 to 1: raised-cosine fades, so that none clicks. */
function pulseAt(timeS: number, pulses: number): number {
  const inSecondS = timeS % 1;
  const nth = Math.floor(inSecondS / APART_S);
  const intoS = inSecondS - nth * APART_S;
  if (nth >= pulses || intoS >= PULSE_S) return 0;
  const fromEndS = Math.min(intoS, PULSE_S - intoS);
  return fromEndS < FADE_S ? (1 - Math.cos((Math.PI * fromEndS) / FADE_S)) / 2 : 1;
}

/**
 * A tone that names a side as a WAVE file: 16 bit, stereo, 400 Hz in pulses whose number a second names it, so that it is
 * known by ear wherever it comes out.
 *
 * Source: Multimedia Programming Interface and Data Specifications 1.0 (IBM and Microsoft, 1991): of two channels the left
 * one comes first in every sample.
 */
export function sideToneWav({ name, pulses }: Pick<SideTone, 'name' | 'pulses'>): Uint8Array<ArrayBuffer> {
  const samples = SIDE_TONE_S * SAMPLE_RATE_HZ;
  const file = new DataView(new ArrayBuffer(HEADER_BYTES + 4 * samples));
  writeHeader(file, 4 * samples, SAMPLE_RATE_HZ, 2);
  const peak = FULL_SCALE * voltageRatio({ gainDb: SIDE_PEAK_DBFS });
  for (let i = 0; i < samples; i++) {
    const turns = ((i * SIDE_TONE_HZ) % SAMPLE_RATE_HZ) / SAMPLE_RATE_HZ;
    const sample = Math.round(peak * pulseAt(i / SAMPLE_RATE_HZ, pulses) * Math.sin(2 * Math.PI * turns));
    file.setInt16(HEADER_BYTES + 4 * i, name === 'right' ? 0 : sample, true);
    file.setInt16(HEADER_BYTES + 4 * i + 2, name === 'left' ? 0 : sample, true);
  }
  return new Uint8Array(file.buffer);
}
