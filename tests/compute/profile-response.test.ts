import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  AMPLIFIED_CHANGES_SHAPE,
  AMPLIFIED_SAME_SHAPE,
  profileGainDb,
  toneRatio,
  UNALTERED_SHAPE,
} from '../../src/compute/profile-response.ts';
import { expectClose, expectDb } from './close.ts';
import { evenly } from './evenly.ts';

const frequencies = fc.double({ min: 20, max: 20_000, noNaN: true });
const pair = { toneHz: 80, referenceHz: 400 };

describe('profileGainDb', () => {
  // The bell: Chromium 156, BiquadFilterNode.getFrequencyResponse (W3C Web Audio API), 48 kHz.
  it('lifts 80 Hz by 13 dB and 400 Hz by 0.727 dB when unaltered', () => {
    expectDb(profileGainDb({ profile: UNALTERED_SHAPE, frequencyHz: 80, engineRunning: false }), 13, 1e-3);
    expectDb(profileGainDb({ profile: UNALTERED_SHAPE, frequencyHz: 400, engineRunning: false }), 0.727, 1e-3);
  });
  it('is 7 dB down and flat for an amplifier', () => {
    fc.assert(
      fc.property(frequencies, fc.boolean(), (frequencyHz, engineRunning) => {
        expectDb(profileGainDb({ profile: AMPLIFIED_SAME_SHAPE, frequencyHz, engineRunning }), -7, 1e-9);
      }),
    );
  });
  it('leaves the engine out of it while the engine is off', () => {
    fc.assert(
      fc.property(frequencies, (frequencyHz) => {
        const off = { frequencyHz, engineRunning: false };
        expectDb(
          profileGainDb({ profile: AMPLIFIED_CHANGES_SHAPE, ...off }),
          profileGainDb({ profile: AMPLIFIED_SAME_SHAPE, ...off }),
          1e-9,
        );
      }),
    );
  });
  it('refuses a level without end and a tone above 24 kHz', () => {
    const still = { frequencyHz: 80, engineRunning: false };
    expect(() => profileGainDb({ ...still, profile: { ...UNALTERED_SHAPE, levelDb: -Infinity } })).toThrow(
      /^levelDb must be finite, got -Infinity$/,
    );
    expect(() => profileGainDb({ ...still, profile: UNALTERED_SHAPE, frequencyHz: 24_000 })).toThrow(
      /^frequencyHz must be below half/,
    );
  });
});

describe('toneRatio', () => {
  it('gives 4.11 for 80 over 400 Hz when unaltered: 13 dB less the 0.727 dB that reach 400 Hz', () => {
    const ratio = toneRatio({ ...pair, profile: UNALTERED_SHAPE, engineRunning: false });
    expectClose(ratio, 10 ** (12.273 / 20), 2e-4);
  });
  it('gives 1 for a flat profile, engine off or running', () => {
    expectClose(toneRatio({ ...pair, profile: AMPLIFIED_SAME_SHAPE, engineRunning: false }), 1);
    expectClose(toneRatio({ ...pair, profile: AMPLIFIED_SAME_SHAPE, engineRunning: true }), 1);
  });
  it.each([
    ['unaltered', UNALTERED_SHAPE],
    ['amplified but changing', AMPLIFIED_CHANGES_SHAPE],
  ])(
    'moves by more than a fifth when the engine starts on the %s profile, whichever way the tone goes',
    (_, profile) => {
      const change = (shape: typeof profile) =>
        toneRatio({ ...pair, profile: shape, engineRunning: true }) /
        toneRatio({ ...pair, profile: shape, engineRunning: false });
      const engine = profile.engineDifference ?? { gainDb: 0, centreHz: 80, q: 1 };
      expect(change(profile)).toBeGreaterThan(1.2);
      expect(change({ ...profile, engineDifference: { ...engine, gainDb: -engine.gainDb } })).toBeLessThan(1 / 1.2);
    },
  );
  it('does not depend on the level of the profile', () => {
    fc.assert(
      fc.property(evenly(-40, 10), (levelDb) => {
        const shifted = { ...UNALTERED_SHAPE, levelDb };
        expectClose(
          toneRatio({ ...pair, profile: shifted, engineRunning: false }),
          toneRatio({ ...pair, profile: UNALTERED_SHAPE, engineRunning: false }),
        );
      }),
    );
  });
});
