import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allowedTimeS, doseRatio, summedLevelDb, windLevelDba } from '../../src/compute/hearing.ts';
import { expectClose, expectDb } from './close.ts';
import { evenly } from './evenly.ts';

const MINUTE_S = 60;

describe('allowedTimeS', () => {
  // NIOSH 98-126, table 1-1.
  it.each([
    [82, 960],
    [85, 480],
    [88, 240],
    [91, 120],
    [94, 60],
    [97, 30],
    [100, 15],
    [103, 7.5],
    [109, 1.875],
  ])('allows a level of %i dBA for %d minutes a day', (levelDba, minutes) => {
    expectClose(allowedTimeS({ levelDba }), minutes * MINUTE_S);
  });
  it('halves with every 3 dB', () => {
    fc.assert(
      fc.property(evenly(80, 130), (levelDba) => {
        expectClose(allowedTimeS({ levelDba: levelDba + 3 }), allowedTimeS({ levelDba }) / 2);
      }),
    );
  });
});

describe('doseRatio', () => {
  // NIOSH 98-126: an hour at 95 dBA and three at 88 make 201 % of a day's sound.
  it('adds up over a day', () => {
    const dose = doseRatio({ levelDba: 95, timeS: 3600 }) + doseRatio({ levelDba: 88, timeS: 3 * 3600 });
    expectClose(dose, 2.0099, 1e-4);
  });
  it('refuses time that runs backwards', () => {
    expect(() => doseRatio({ levelDba: 90, timeS: -1 })).toThrow(/^timeS must be finite and not below 0, got -1$/);
  });
});

describe('summedLevelDb', () => {
  // The sum of powers, worked by hand.
  it('gives 93.01 dB for twice 90, 90.41 for 90 and 80, and 93.44 for 85, 88 and 91', () => {
    expectDb(summedLevelDb([90, 90]), 93.0103, 1e-4);
    expectDb(summedLevelDb([90, 80]), 90.4139, 1e-4);
    expectDb(summedLevelDb([85, 88, 91]), 93.4363, 1e-4);
  });
  it('refuses to add nothing', () => {
    expect(() => summedLevelDb([])).toThrow(/at least one level/);
  });
});

describe('windLevelDba', () => {
  // Binnington, McCombe, Harris 1993: 90 dBA at 40 mph, 112 at 100 mph.
  it('is 90 dBA at 40 mph and 112 dBA at 100', () => {
    expectDb(windLevelDba({ speedMS: 17.8816 }), 90, 1e-9);
    expectDb(windLevelDba({ speedMS: 44.704 }), 112, 1e-9);
  });
  // McCombe, Binnington, Nash 1994, another set of riders: 95 dBA at 22 m/s, 107 at 36 m/s.
  it('agrees with other riders of the same years within their spread', () => {
    expectDb(windLevelDba({ speedMS: 22.352 }), 95, 3);
    expectDb(windLevelDba({ speedMS: 35.763 }), 107, 3);
  });
  it('refuses to stand', () => {
    expect(() => windLevelDba({ speedMS: 0 })).toThrow(/^speedMS must be/);
  });
});
