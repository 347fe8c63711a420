import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  gainFromPowerRatioDb,
  gainFromVoltageRatioDb,
  levelDbu,
  levelDbv,
  powerRatio,
  voltageRatio,
} from '../../src/compute/decibel.ts';
import { expectClose, expectDb } from './close.ts';
import { evenly } from './evenly.ts';

// Lessons In Electric Circuits, Semiconductors vol., "Decibels", for the figures it prints.
const gains = evenly(-120, 120);

describe('voltageRatio', () => {
  it('gives 3.16 for the 10 dB attenuator of the textbook', () =>
    expectClose(voltageRatio({ gainDb: 10 }), 3.16, 1e-3));
  it('gives 5.0, 4.5 and 4.0 for boosts of 14, 13 and 12 dB', () => {
    expectClose(voltageRatio({ gainDb: 14 }), 5.011872, 1e-6);
    expectClose(voltageRatio({ gainDb: 13 }), 4.466836, 1e-6);
    expectClose(voltageRatio({ gainDb: 12 }), 3.981072, 1e-6);
  });
  it('multiplies where gains add', () => {
    fc.assert(
      fc.property(gains, gains, (a, b) => {
        expectClose(voltageRatio({ gainDb: a + b }), voltageRatio({ gainDb: a }) * voltageRatio({ gainDb: b }));
      }),
    );
  });
  it('refuses a gain without end', () => {
    expect(() => voltageRatio({ gainDb: Infinity })).toThrow(/^gainDb must be finite, got Infinity$/);
  });
});

describe('powerRatio', () => {
  it('gives 1.9953 for 3 dB: nearly, but not quite, twice', () => {
    expectClose(powerRatio({ gainDb: 3 }), 1.995262, 1e-6);
  });
  it('is the square of the voltage ratio', () => {
    fc.assert(fc.property(gains, (gainDb) => expectClose(powerRatio({ gainDb }), voltageRatio({ gainDb }) ** 2)));
  });
  it('refuses a gain that is no number', () => {
    expect(() => powerRatio({ gainDb: NaN })).toThrow(/^gainDb must be finite, got NaN$/);
  });
});

describe('gainFromVoltageRatioDb', () => {
  it('gives 40 dB for 10 mV in and 1 V out', () => expectClose(gainFromVoltageRatioDb({ voltageRatio: 1 / 0.01 }), 40));
  it('is undone by voltageRatio', () => {
    fc.assert(
      fc.property(gains, (gainDb) => {
        expectClose(gainFromVoltageRatioDb({ voltageRatio: voltageRatio({ gainDb }) }) - gainDb, 0);
      }),
    );
  });
  it('refuses silence, which has no decibels', () => {
    expect(() => gainFromVoltageRatioDb({ voltageRatio: 0 })).toThrow(
      /^voltageRatio must be finite and above 0, got 0$/,
    );
  });
});

describe('gainFromPowerRatioDb', () => {
  it('gives 4.77 dB and 6.99 dB for stages of 3 and 5, and 11.76 dB for both in a row', () => {
    expectClose(gainFromPowerRatioDb({ powerRatio: 3 }), 4.77, 1e-3);
    expectClose(gainFromPowerRatioDb({ powerRatio: 5 }), 6.99, 1e-3);
    expectClose(gainFromPowerRatioDb({ powerRatio: 15 }), 11.76, 1e-3);
  });
  it('is undone by powerRatio', () => {
    fc.assert(
      fc.property(gains, (gainDb) => {
        expectClose(gainFromPowerRatioDb({ powerRatio: powerRatio({ gainDb }) }) - gainDb, 0);
      }),
    );
  });
  it('refuses a negative ratio', () => {
    expect(() => gainFromPowerRatioDb({ powerRatio: -1 })).toThrow(/^powerRatio must be finite and above 0, got -1$/);
  });
});

describe('levels against a fixed voltage', () => {
  // Lessons In Electric Circuits, Semiconductors vol., "Absolute dB scales": 0 dBm in 600 ohm is 0.7746 V.
  it('puts 1 V at 0 dBV and at 2.22 dBu, and 0.7746 V at 0 dBu', () => {
    expectDb(levelDbv({ levelV: 1 }), 0, 1e-12);
    expectDb(levelDbu({ levelV: 1 }), 2.21849, 1e-5);
    expectDb(levelDbu({ levelV: 0.774597 }), 0, 1e-5);
  });
  it('puts the 2 and 4 V of line outputs at 6.02 and 12.04 dBV', () => {
    expectDb(levelDbv({ levelV: 2 }), 6.0206, 1e-4);
    expectDb(levelDbu({ levelV: 4 }), 14.2597, 1e-4);
  });
  it('refuses silence', () => {
    expect(() => levelDbv({ levelV: 0 })).toThrow(/^levelV must be finite and above 0, got 0$/);
  });
});
