import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gainFromVoltageRatioDb } from '../../src/compute/decibel.ts';
import { boostClipsAtV, boostPowerRatio, headroomLostDb } from '../../src/compute/headroom.ts';
import { expectClose, expectDb } from './close.ts';
import { evenly } from './evenly.ts';

// 10^(dB / 20) and 10^(dB / 10): Lessons In Electric Circuits, Semiconductors vol., "Decibels".
const boosts = evenly(0, 30);

describe('boostClipsAtV', () => {
  it('gives 1.90 V where 8.49 V are clean and the bass is lifted by 13 dB (worked by hand: 8.485 / 4.467)', () => {
    expectClose(boostClipsAtV({ cleanV: 8.485281, boostDb: 13 }), 1.899618, 1e-6);
  });
  it('is below the clean volts by exactly the headroom lost', () => {
    fc.assert(
      fc.property(boosts, (boostDb) => {
        const lost = gainFromVoltageRatioDb({ voltageRatio: 8.5 / boostClipsAtV({ cleanV: 8.5, boostDb }) });
        expectDb(lost, headroomLostDb({ boostDb }), 1e-9);
      }),
    );
  });
  it('gives the clean volts themselves without a boost, and with a cut', () => {
    expect(boostClipsAtV({ cleanV: 8.5, boostDb: 0 })).toBe(8.5);
    expect(boostClipsAtV({ cleanV: 8.5, boostDb: -6 })).toBe(8.5);
  });
  it('refuses an output that is never clean', () => {
    expect(() => boostClipsAtV({ cleanV: 0, boostDb: 13 })).toThrow(/^cleanV must be finite and above 0, got 0$/);
  });
});

describe('headroomLostDb', () => {
  it('loses what is boosted and nothing for a cut', () => {
    expect(headroomLostDb({ boostDb: 13 })).toBe(13);
    expect(headroomLostDb({ boostDb: 0 })).toBe(0);
    expect(headroomLostDb({ boostDb: -13 })).toBe(0);
  });
  it('refuses a boost that is no number', () => {
    expect(() => headroomLostDb({ boostDb: NaN })).toThrow(/^boostDb must be finite, got NaN$/);
  });
});

describe('boostPowerRatio', () => {
  it('gives 25.1 for 14 dB and 15.8 for 12 dB', () => {
    expectClose(boostPowerRatio({ boostDb: 14 }), 25.118864, 1e-7);
    expectClose(boostPowerRatio({ boostDb: 12 }), 15.848932, 1e-7);
  });
  it('is the square of what the volts of a tone are lifted by', () => {
    fc.assert(
      fc.property(boosts, (boostDb) => {
        expectClose(boostPowerRatio({ boostDb }), (8.5 / boostClipsAtV({ cleanV: 8.5, boostDb })) ** 2);
      }),
    );
  });
  it('refuses a boost without end', () => {
    expect(() => boostPowerRatio({ boostDb: Infinity })).toThrow(/^boostDb must be finite, got Infinity$/);
  });
});
