import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutOutA, cutOutOhm, sagV } from '../../src/compute/amp-supply.ts';
import { dropV } from '../../src/compute/wire.ts';
import { expectClose } from './close.ts';

const positive = fc.double({ min: 0.01, max: 100, noNaN: true });

describe('cutOutOhm', () => {
  // Ohm's law, worked by hand: (13.8 V − 10.2 V) / 6 A.
  it('gives 0.6 Ω for a cut-out at 10.2 V on a 13.8 V bike when 6 A flow', () => {
    expectClose(cutOutOhm({ supplyV: 13.8, cutV: 10.2, currentA: 6 }), 0.6);
  });
  it('is the resistance that loses exactly what the supply has above the cut-out', () => {
    fc.assert(
      fc.property(positive, positive, positive, (cutV, aboveV, currentA) => {
        const resistanceOhm = cutOutOhm({ supplyV: cutV + aboveV, cutV, currentA });
        expectClose(dropV({ currentA, resistanceOhm }), cutV + aboveV - cutV, 1e-9);
      }),
    );
  });
  it('refuses a cut-out at or above the supply, and no current', () => {
    expect(() => cutOutOhm({ supplyV: 10, cutV: 10, currentA: 1 })).toThrow(
      /^cutV must be below supplyV \(10\), got 10$/,
    );
    expect(() => cutOutOhm({ supplyV: 12, cutV: 10, currentA: 0 })).toThrow(
      /^currentA must be finite and above 0, got 0$/,
    );
  });
});

describe('cutOutA', () => {
  it('gives 6 A for 0.6 Ω of ground: most bass asks for more', () => {
    expectClose(cutOutA({ supplyV: 13.8, cutV: 10.2, resistanceOhm: 0.6 }), 6);
  });
  it('undoes cutOutOhm', () => {
    fc.assert(
      fc.property(positive, (currentA) => {
        const feed = { supplyV: 12.6, cutV: 10.5 };
        expectClose(cutOutA({ ...feed, resistanceOhm: cutOutOhm({ ...feed, currentA }) }), currentA);
      }),
    );
  });
  it('refuses a path without resistance: nothing would ever cut it off', () => {
    expect(() => cutOutA({ supplyV: 12, cutV: 10, resistanceOhm: 0 })).toThrow(
      /^resistanceOhm must be finite and above 0/,
    );
  });
});

describe('sagV', () => {
  // Ohm's law, worked by hand: 12.6 V − 60 A × 20 mΩ.
  it('gives 11.4 V for a battery of 12.6 V and 20 mΩ under 60 A', () => {
    expectClose(sagV({ openV: 12.6, internalOhm: 0.02, currentA: 60 }), 11.4);
  });
  it('never goes below zero, and is the open volts without load', () => {
    expect(sagV({ openV: 12, internalOhm: 10, currentA: 10 })).toBe(0);
    expect(sagV({ openV: 12.6, internalOhm: 0.02, currentA: 0 })).toBe(12.6);
  });
  it('refuses a negative current', () => {
    expect(() => sagV({ openV: 12, internalOhm: 0.02, currentA: -1 })).toThrow(
      /^currentA must be finite and not below 0/,
    );
  });
});
