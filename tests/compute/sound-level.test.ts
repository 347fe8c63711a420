import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coneLevelDb, levelAtPowerDb, lowestFrequencyHz } from '../../src/compute/sound-level.ts';
import { expectClose, expectDb } from './close.ts';
import { evenly } from './evenly.ts';

describe('levelAtPowerDb', () => {
  // 10 log10 P on top of the sensitivity: the definition in IEC 60268-5.
  it('gives 110 dB for 100 W and 104.1 dB for 25.92 W into a speaker of 90 dB', () => {
    expectDb(levelAtPowerDb({ sensitivityDb: 90, powerW: 100 }), 110, 1e-9);
    expectDb(levelAtPowerDb({ sensitivityDb: 90, powerW: 25.92 }), 104.136, 1e-3);
  });
  it('refuses no power: silence has no decibels', () => {
    expect(() => levelAtPowerDb({ sensitivityDb: 90, powerW: 0 })).toThrow(RangeError);
  });
});

describe('coneLevelDb', () => {
  // √2 π ρ f² V / r over 20 µPa, worked by hand: 133 cm², 4 mm, 100 Hz give 2.83634 Pa at 1 m, which is 103.035 dB.
  it('gives 103.0 dB at 100 Hz for 133 cm² that move 4 mm', () => {
    expectDb(coneLevelDb({ coneM2: 133e-4, excursionM: 4e-3, frequencyHz: 100 }), 103.035, 1e-2);
  });
  it('gives 96.5 dB at 50 Hz for 100 cm³', () => {
    expectDb(coneLevelDb({ coneM2: 100e-4, excursionM: 10e-3, frequencyHz: 50 }), 96.475, 1e-2);
  });
  it('falls by 12 dB with each octave down', () => {
    fc.assert(
      fc.property(evenly(20, 2000), evenly(1e-3, 5e-2), (frequencyHz, coneM2) => {
        const at = (hertz: number) => coneLevelDb({ coneM2, excursionM: 3e-3, frequencyHz: hertz });
        expectDb(at(2 * frequencyHz) - at(frequencyHz), 40 * Math.log10(2), 1e-9);
      }),
    );
  });
});

describe('lowestFrequencyHz', () => {
  it('is 60 Hz where 104.2 cm³ shall make 100 dB (the closed form turned round by hand)', () => {
    expectClose(lowestFrequencyHz({ coneM2: 104.203e-4, excursionM: 10e-3, levelDb: 100 }), 60, 1e-4);
  });
  it('is where the cone runs out of way', () => {
    fc.assert(
      fc.property(evenly(80, 120), evenly(1e-3, 5e-2), (levelDb, coneM2) => {
        const frequencyHz = lowestFrequencyHz({ coneM2, excursionM: 2e-3, levelDb });
        expectDb(coneLevelDb({ coneM2, excursionM: 2e-3, frequencyHz }), levelDb, 1e-9);
      }),
    );
  });
  it('refuses a cone without area', () => {
    expect(() => lowestFrequencyHz({ coneM2: 0, excursionM: 1e-3, levelDb: 90 })).toThrow(/^coneM2 must be/);
  });
});
