import { voltageRatio } from '../compute/decibel.ts';
import { requirePositive, requireWithin } from '../compute/require.ts';

/** The four loud tones have the same peak, full scale, so that two readings at one volume step compare outputs, not files. */
export const TONE_PEAK_DBFS = 0;
/**
 * The peak of the four quiet ones, which are for ratios. Where a head unit lifts the bass before its volume control, a tone
 * at full scale clips under the lift at every step; 15 dB leave room for 14.
 */
export const QUIET_PEAK_DBFS = -15;

/** Long enough to read a meter after the fade, short enough not to cook a coil at a high step. */
export const TONE_DURATION_S = 20;

/** From one step of a stepped tone to the next, and how long each lasts. 3 dB is twice the power. */
export const STEP_DB = 3;
export const STEP_S = 2;

/** How long the file of a tone lasts. */
export const durationOf = ({ steps }: { readonly steps: number }): number =>
  steps === 1 ? TONE_DURATION_S : steps * STEP_S;

export const TONES = [
  { name: '80hz', frequencyHz: 80, file: '80hz.wav', peakDbfs: TONE_PEAK_DBFS, steps: 1 },
  { name: '400hz', frequencyHz: 400, file: '400hz.wav', peakDbfs: TONE_PEAK_DBFS, steps: 1 },
  { name: '1khz', frequencyHz: 1000, file: '1khz.wav', peakDbfs: TONE_PEAK_DBFS, steps: 1 },
  { name: '4khz', frequencyHz: 4000, file: '4khz.wav', peakDbfs: TONE_PEAK_DBFS, steps: 1 },
  { name: 'quiet-80hz', frequencyHz: 80, file: 'quiet-80hz.wav', peakDbfs: QUIET_PEAK_DBFS, steps: 1 },
  { name: 'quiet-400hz', frequencyHz: 400, file: 'quiet-400hz.wav', peakDbfs: QUIET_PEAK_DBFS, steps: 1 },
  { name: 'quiet-1khz', frequencyHz: 1000, file: 'quiet-1khz.wav', peakDbfs: QUIET_PEAK_DBFS, steps: 1 },
  { name: 'quiet-4khz', frequencyHz: 4000, file: 'quiet-4khz.wav', peakDbfs: QUIET_PEAK_DBFS, steps: 1 },
  // Louder step by step up to full scale, for ears: what is cut off turns rough from one step to the next.
  { name: 'stepped-80hz', frequencyHz: 80, file: 'stepped-80hz.wav', peakDbfs: TONE_PEAK_DBFS, steps: 7 },
] as const;

const FULL_SCALE = 32_767;
export const HEADER_BYTES = 44;
const BYTES_PER_SAMPLE = 2;

type Tone = {
  frequencyHz: number;
  durationS: number;
  sampleRateHz?: number;
  peakDbfs?: number;
  fadeS?: number;
  steps?: number;
};

/**
 * A sine as a WAVE file: 16 bit, mono, zero phase at the start, raised-cosine fades so that it neither clicks nor thumps.
 * With several steps each lasts as long as the next and is `STEP_DB` louder, the last at the peak; the way from one to the
 * next is half a fade.
 *
 * Source: Multimedia Programming Interface and Data Specifications 1.0 (IBM and Microsoft, 1991), RIFF and WAVE.
 * Valid: below half the sample rate, peak at most 0 dBFS. Rounded, not dithered: the error lies some 98 dB under the tone.
 * Assumes 0 dBFS is a sine whose peak is the largest sample, so that its RMS is −3.01 dB against that sample.
 * @throws {RangeError} if a value is outside that, or both fades together are longer than the tone.
 */
export function toneWav(tone: Tone): Uint8Array<ArrayBuffer> {
  const { frequencyHz, durationS, sampleRateHz = 44_100, peakDbfs = TONE_PEAK_DBFS, fadeS = 0.05, steps = 1 } = tone;
  requirePositive({ frequencyHz, durationS, sampleRateHz });
  requireWithin({ frequencyHz }, 0, sampleRateHz / 2);
  requireWithin({ peakDbfs }, -96, 0);
  requireWithin({ fadeS }, 0, durationS / (2 * steps));
  requireWithin({ steps }, 1, 30);

  const samples = Math.round(durationS * sampleRateHz);
  const fade = Math.round(fadeS * sampleRateHz);
  const peak = FULL_SCALE * voltageRatio({ gainDb: peakDbfs });
  const file = new DataView(new ArrayBuffer(HEADER_BYTES + samples * BYTES_PER_SAMPLE));
  writeHeader(file, samples * BYTES_PER_SAMPLE, sampleRateHz);
  for (let i = 0; i < samples; i++) {
    // The remainder keeps the angle small: a large one loses its last digits, and the last second would differ.
    const turns = ((i * frequencyHz) % sampleRateHz) / sampleRateHz;
    const fromEnd = Math.min(i, samples - 1 - i);
    const envelope = fromEnd < fade ? (1 - Math.cos((Math.PI * fromEnd) / fade)) / 2 : 1;
    const sample = Math.round(
      peak * envelope * stepRatio(i, samples / steps, fade, steps) * Math.sin(2 * Math.PI * turns),
    );
    file.setInt16(HEADER_BYTES + i * BYTES_PER_SAMPLE, sample, true);
  }
  return new Uint8Array(file.buffer);
}

/** How loud a sample of a stepped tone is, over the last step. */
function stepRatio(i: number, stepSamples: number, fade: number, steps: number): number {
  const at = Math.min(steps - 1, Math.floor(i / stepSamples));
  const levelOf = (step: number) => voltageRatio({ gainDb: STEP_DB * (step - (steps - 1)) });
  const into = i - at * stepSamples;
  if (at === 0 || into >= fade) return levelOf(at);
  const share = (1 - Math.cos((Math.PI * into) / fade)) / 2;
  return levelOf(at - 1) + share * (levelOf(at) - levelOf(at - 1));
}

/** The header of a WAVE file of 16 bits. */
export function writeHeader(file: DataView, dataBytes: number, sampleRateHz: number, channels = 1): void {
  const text = (at: number, four: string) => {
    for (let i = 0; i < 4; i++) file.setUint8(at + i, four.charCodeAt(i));
  };
  text(0, 'RIFF');
  file.setUint32(4, HEADER_BYTES - 8 + dataBytes, true);
  text(8, 'WAVE');
  text(12, 'fmt ');
  file.setUint32(16, 16, true); // length of the format part
  file.setUint16(20, 1, true); // linear PCM
  file.setUint16(22, channels, true); // channels
  file.setUint32(24, sampleRateHz, true);
  file.setUint32(28, sampleRateHz * channels * BYTES_PER_SAMPLE, true); // bytes a second
  file.setUint16(32, channels * BYTES_PER_SAMPLE, true); // bytes for all channels of one sample
  file.setUint16(34, 8 * BYTES_PER_SAMPLE, true); // bits a sample
  text(36, 'data');
  file.setUint32(40, dataBytes, true);
}
