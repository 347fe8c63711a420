import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ampCurrentA, DENSE_MUSIC_AVERAGE_RATIO, MUSIC_AVERAGE_RATIO } from '../../src/compute/amp-current.ts';
import { expectClose } from './close.ts';

const amp = { powerW: 25, channels: 4, efficiencyRatio: 0.6, supplyV: 14.4, averageRatio: MUSIC_AVERAGE_RATIO };

describe('ampCurrentA', () => {
  // One eighth of rated power, all channels driven: 16 CFR 432.3(c). Worked by hand: 100 W / 8 / 0.6 / 14.4 V.
  it('gives 1.447 A for four channels of 25 W with music, at 60 % efficiency', () => {
    expectClose(ampCurrentA(amp), 1.4468, 1e-4);
  });
  it('gives 11.57 A for the same amplifier at full sine', () => {
    expectClose(ampCurrentA({ ...amp, averageRatio: 1 }), 11.574, 1e-4);
  });
  // Ideal class-B bridge, application section of a bridge amplifier's data sheet: 25.92 W, efficiency π/4, I = 2 Vp / (π R).
  it('gives 2.29 A for one ideal class-B bridge channel at full sine from 14.4 V into 4 Ω', () => {
    const ideal = { powerW: 25.92, channels: 1, efficiencyRatio: Math.PI / 4, supplyV: 14.4, averageRatio: 1 };
    expectClose(ampCurrentA(ideal), (2 * 14.4) / (Math.PI * 4));
  });
  it('draws 8/3 as much with dense music as with plain music', () => {
    expectClose(ampCurrentA({ ...amp, averageRatio: DENSE_MUSIC_AVERAGE_RATIO }) / ampCurrentA(amp), 8 / 3);
  });
  it('keeps energy: supply × current × efficiency is what the channels give', () => {
    const parts = fc.double({ min: 0.05, max: 1, noNaN: true });
    fc.assert(
      fc.property(parts, parts, fc.integer({ min: 1, max: 16 }), (efficiencyRatio, averageRatio, channels) => {
        const currentA = ampCurrentA({ ...amp, efficiencyRatio, averageRatio, channels });
        expectClose(currentA * amp.supplyV * efficiencyRatio, averageRatio * channels * amp.powerW);
      }),
    );
  });
  it('refuses to give out more than it takes in', () => {
    expect(() => ampCurrentA({ ...amp, efficiencyRatio: 1.01 })).toThrow(
      /^efficiencyRatio must be from 0 to 1, got 1.01$/,
    );
    expect(() => ampCurrentA({ ...amp, efficiencyRatio: 0 })).toThrow(
      /^efficiencyRatio must be finite and above 0, got 0$/,
    );
    expect(() => ampCurrentA({ ...amp, averageRatio: 2 })).toThrow(/^averageRatio must be from 0 to 1, got 2$/);
  });
  it('refuses half a channel and more than sixteen', () => {
    expect(() => ampCurrentA({ ...amp, channels: 2.5 })).toThrow(/^channels must be a whole number, got 2.5$/);
    expect(() => ampCurrentA({ ...amp, channels: 17 })).toThrow(/^channels must be from 1 to 16, got 17$/);
  });
});
