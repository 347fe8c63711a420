import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BRIDGE_LOSS_LOADED_V, BRIDGE_LOSS_UNLOADED_V, cleanOutputV, levelV, powerW } from '../../src/compute/level.ts';
import { expectClose } from './close.ts';

const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true });

describe('levelV', () => {
  // Lessons In Electric Circuits, Semiconductors vol., "Absolute dB scales", prints 0.7746 V.
  it('gives 0.7746 V for 1 mW in 600 Ω, the reference of dBm', () => {
    expectClose(levelV({ powerW: 0.001, loadOhm: 600 }), 0.7746, 1e-4);
  });
  it('gives 18.97 V for 90 W into 4 Ω (worked by hand: √360)', () => {
    expectClose(levelV({ powerW: 90, loadOhm: 4 }), 18.9737, 1e-5);
  });
  it('gives 0 V for no power', () => expect(levelV({ powerW: 0, loadOhm: 4 })).toBe(0));
  it('is undone by powerW', () => {
    fc.assert(
      fc.property(positive, positive, (watts, loadOhm) => {
        expectClose(powerW({ levelV: levelV({ powerW: watts, loadOhm }), loadOhm }), watts);
      }),
    );
  });
  it('refuses negative power and a load of nothing, and names them with their unit', () => {
    expect(() => levelV({ powerW: -1, loadOhm: 4 })).toThrow(/^powerW must be finite and not below 0, got -1$/);
    expect(() => levelV({ powerW: 1, loadOhm: 0 })).toThrow(/^loadOhm must be finite and above 0, got 0$/);
  });
});

describe('powerW', () => {
  // Lessons In Electric Circuits, DC vol., "Calculating electric power": 18 V and 36 V across 3 Ω.
  it('gives 108 W for 18 V across 3 Ω, and four times that for twice the volts', () => {
    expectClose(powerW({ levelV: 18, loadOhm: 3 }), 108);
    expectClose(powerW({ levelV: 36, loadOhm: 3 }), 432);
  });
  it('refuses negative volts, since it takes RMS', () => {
    expect(() => powerW({ levelV: -0.1, loadOhm: 4 })).toThrow(/^levelV must be finite and not below 0, got -0.1$/);
    expect(() => powerW({ levelV: 1, loadOhm: Infinity })).toThrow(
      /^loadOhm must be finite and above 0, got Infinity$/,
    );
  });
});

describe('cleanOutputV', () => {
  // Bridge-tied load of any amplifier text: P = Vs² / (2 R), so 25.92 W into 4 Ω from 14.4 V.
  it('gives 25.92 W into 4 Ω from 14.4 V when nothing is lost', () => {
    expectClose(powerW({ levelV: cleanOutputV({ supplyV: 14.4, lossV: 0 }), loadOhm: 4 }), 25.92);
  });
  it('gives 8.49 V, which is 18 W into 4 Ω, from 14.2 V with the loss of a loaded bridge (worked by hand)', () => {
    const clean = cleanOutputV({ supplyV: 14.2, lossV: BRIDGE_LOSS_LOADED_V });
    expectClose(clean, 8.4853, 1e-5);
    expectClose(powerW({ levelV: clean, loadOhm: 4 }), 18);
  });
  it('gives 9.48 V into an amplifier, about 1 dB more than into a speaker', () => {
    expectClose(cleanOutputV({ supplyV: 14.2, lossV: BRIDGE_LOSS_UNLOADED_V }), 9.4752, 1e-5);
  });
  it('loses one volt of output for each √2 V of supply', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 20, noNaN: true }), (supplyV) => {
        const gained =
          cleanOutputV({ supplyV: supplyV + Math.SQRT2, lossV: 2.2 }) - cleanOutputV({ supplyV, lossV: 2.2 });
        expectClose(gained, 1);
      }),
    );
  });
  it('refuses a loss that eats the whole supply, where no output is left', () => {
    expect(() => cleanOutputV({ supplyV: 2.2, lossV: 2.2 })).toThrow(/^lossV must be below supplyV \(2.2\), got 2.2$/);
    expect(cleanOutputV({ supplyV: 2.3, lossV: 2.2 })).toBeGreaterThan(0);
    expect(() => cleanOutputV({ supplyV: NaN, lossV: 2.2 })).toThrow(/^supplyV must be finite and above 0, got NaN$/);
  });
});
