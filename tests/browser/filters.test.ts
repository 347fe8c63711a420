import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { highpass, magnitudeDb, peaking } from '../../src/compute/filter.ts';
import { profileGainDb, UNALTERED_SHAPE } from '../../src/compute/profile-response.ts';
import { useBrowser, visit } from './browser.ts';

useBrowser();

/** The browser's own answer, from the W3C Web Audio API: BiquadFilterNode.getFrequencyResponse, in single precision. */
interface Node {
  readonly type: 'peaking' | 'highpass';
  readonly frequency: number;
  readonly Q: number;
  readonly gain: number;
}
const FREQUENCIES_HZ = [20, 40, 80, 160, 400, 1000, 4000, 10_000] as const;
/** Single precision in the browser, double here: a thousandth of a decibel. */
const CLOSE_DB = 1e-3;

async function inTheBrowser(nodes: readonly Node[]): Promise<readonly (readonly number[])[]> {
  const { page, close } = await visit('about/');
  const responses = await page.evaluate(
    ({ list, frequencies }) =>
      list.map((options) => {
        const node = new BiquadFilterNode(new OfflineAudioContext(1, 128, 48_000), options);
        const magnitudes = new Float32Array(frequencies.length);
        node.getFrequencyResponse(Float32Array.from(frequencies), magnitudes, new Float32Array(frequencies.length));
        return [...magnitudes].map((ratio) => 20 * Math.log10(ratio));
      }),
    { list: nodes, frequencies: [...FREQUENCIES_HZ] },
  );
  await close();
  return responses;
}

const ours = ({ type, frequency, Q, gain }: Node): readonly number[] => {
  const coefficients =
    type === 'peaking'
      ? peaking({ centreHz: frequency, q: Q, gainDb: gain })
      : highpass({ cornerHz: frequency, qDb: Q });
  return FREQUENCIES_HZ.map((frequencyHz) => magnitudeDb({ coefficients, frequencyHz }));
};

const anyNode: fc.Arbitrary<Node> = fc.record({
  type: fc.constantFrom('peaking', 'highpass'),
  frequency: fc.integer({ min: 30, max: 6000 }),
  Q: fc.integer({ min: 3, max: 80 }).map((tenths) => tenths / 10),
  gain: fc.integer({ min: -180, max: 180 }).map((tenths) => tenths / 10),
});

describe('filters, against the browser’s own', () => {
  it('agree within 0.001 dB on 60 random peaking and high-pass filters', async () => {
    const nodes = fc.sample(anyNode, { numRuns: 60, seed: 20_261 });
    const theirs = await inTheBrowser(nodes);
    nodes.forEach((node, i) => {
      ours(node).forEach((gainDb, k) => {
        expect(
          Math.abs(gainDb - (theirs[i]?.[k] ?? Number.NaN)),
          `${JSON.stringify(node)} at ${FREQUENCIES_HZ[k]} Hz`,
        ).toBeLessThan(CLOSE_DB);
      });
    });
  });

  it('give the response of the unaltered profile, a peak of 13 dB at 80 Hz', async () => {
    const [theirs = []] = await inTheBrowser([{ type: 'peaking', frequency: 80, Q: 1, gain: 13 }]);
    FREQUENCIES_HZ.forEach((frequencyHz, k) => {
      const gainDb = profileGainDb({ profile: UNALTERED_SHAPE, frequencyHz, engineRunning: false });
      expect(Math.abs(gainDb - (theirs[k] ?? Number.NaN))).toBeLessThan(CLOSE_DB);
    });
  });
});
