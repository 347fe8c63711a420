import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FILAMENT_COLD_RATIO, lampA, lampSlopeS } from '../../src/compute/lamp.ts';
import { expectClose } from './close.ts';
import { evenly } from './evenly.ts';

/**
 * Tungsten by temperature: resistivity in µΩ cm and radiated W/cm². Source: Jones and Langmuir, "The characteristics of
 * tungsten filaments as functions of temperature", 1927, from memory.
 */
const TUNGSTEN = [
  { kelvin: 1400, resistivity: 37.2, radiated: 3.83, within: 1 / 6 },
  { kelvin: 1500, resistivity: 40.4, radiated: 5.5, within: 1 / 6 },
  { kelvin: 2000, resistivity: 56.7, radiated: 23.7, within: 0.1 },
  { kelvin: 2500, resistivity: 73.9, radiated: 69.8, within: 0.1 },
  { kelvin: 3000, resistivity: 92.0, radiated: 160, within: 0.1 },
];
const AT_RATED_VOLTS = { kelvin: 2800, resistivity: 84.7, radiated: 117 };
/** Of one wire: the current goes with √(watts / ohms), the volts with √(watts × ohms). */
const atHeat = ({ resistivity, radiated }: { resistivity: number; radiated: number }) => ({
  current: Math.sqrt(radiated / resistivity),
  volts: Math.sqrt(radiated * resistivity),
});

describe('lampA', () => {
  const headLamp = { ratedV: 12, ratedA: 5 };

  it('is the rated current at the rated volts, and none without volts', () => {
    expect(lampA({ ...headLamp, lampV: 12 })).toBe(5);
    expect(lampA({ ...headLamp, lampV: 0 })).toBe(0);
  });
  it.each(TUNGSTEN)('is near what the tables of tungsten give for a filament at $kelvin K', ({ within, ...row }) => {
    const [rated, now] = [atHeat(AT_RATED_VOLTS), atHeat(row)];
    expectClose(lampA({ lampV: now.volts, ratedV: rated.volts, ratedA: rated.current }), now.current, within);
  });
  // UN R37: a 12 V bulb of 60 W is tested at 13.2 V, where it may take 75 W; from memory.
  it('keeps a 60 W head lamp under the 75 W that it may take at 13.2 V', () => {
    const watts = 13.2 * lampA({ ...headLamp, lampV: 13.2 });
    expect(watts).toBeGreaterThan(66);
    expect(watts).toBeLessThan(75);
  });
  // Lamp rerating: current × (applied / design volts)^0.55. By hand: (4 / 12)^0.55 = 0.5465, of 55 W / 12 V = 4.583 A.
  it('draws 2.5 A of 4.58 A at a third of its volts, which are 1.6 Ω and not the 2.6 Ω of full light', () => {
    const lamp = { ratedV: 12, ratedA: 55 / 12 };
    expectClose(lampA({ ...lamp, lampV: 4 }), 2.505, 1e-3);
    expectClose(4 / lampA({ ...lamp, lampV: 4 }), 1.597, 1e-3);
    expectClose(12 / lampA({ ...lamp, lampV: 12 }), 2.618, 1e-3);
  });
  // The same source prints power × (applied / design volts)^1.6, rounded: within 1 % of it at nine tenths of the volts.
  it('agrees with the power that is printed beside the current', () => {
    expectClose((0.9 * lampA({ ...headLamp, lampV: 10.8 })) / 5, 0.9 ** 1.6, 0.01);
  });
  // Radiation: P ∝ T⁴ (Stefan–Boltzmann). Tungsten: R ∝ T^1.2 (from memory). So V²/R ∝ R^(4/1.2), and R ∝ V^0.46.
  it('agrees with radiation and the resistivity of tungsten within 2 % down to a third of its volts', () => {
    const exponent = 2 / (1 + 4 / 1.2);
    expectClose(4 / lampA({ ...headLamp, lampV: 4 }) / (12 / 5), (1 / 3) ** exponent, 0.02);
  });
  it('has a fifteenth of its ohms when it is cold, as tungsten has', () => {
    expectClose(1e-3 / lampA({ ...headLamp, lampV: 1e-3 }), (12 / 5) * FILAMENT_COLD_RATIO);
    expectClose(FILAMENT_COLD_RATIO, 1 / 15, 1e-3);
  });
  it('has fewer ohms the dimmer it is', () => {
    fc.assert(
      fc.property(evenly(0.5, 14), evenly(0.5, 14), (a, b) => {
        const ohm = (lampV: number) => lampV / lampA({ ...headLamp, lampV });
        expect(ohm(Math.min(a, b))).toBeLessThanOrEqual(ohm(Math.max(a, b)));
      }),
    );
  });
  it('refuses negative volts and a rating of nothing', () => {
    expect(() => lampA({ ...headLamp, lampV: -1 })).toThrow(/^lampV must be finite and not below 0, got -1$/);
    expect(() => lampA({ ratedV: 0, ratedA: 5, lampV: 1 })).toThrow(/^ratedV must be finite and above 0, got 0$/);
  });
});

describe('lampSlopeS', () => {
  const lamp = { ratedV: 12, ratedA: 5 };
  it('is what the current gains over a little more volts, lit and cold', () => {
    for (const lampV of [1e-3, 0.02, 0.5, 4, 12]) {
      const stepV = 1e-6 * lampV;
      const gainedA = lampA({ ...lamp, lampV: lampV + stepV }) - lampA({ ...lamp, lampV: lampV - stepV });
      expectClose(lampSlopeS({ ...lamp, lampV }), gainedA / (2 * stepV), 1e-6);
    }
  });
  it('is that of a cold filament without any volts', () => {
    expectClose(lampSlopeS({ ...lamp, lampV: 0 }), 5 / (12 * FILAMENT_COLD_RATIO));
  });
  it('refuses negative volts', () => {
    expect(() => lampSlopeS({ ...lamp, lampV: -1 })).toThrow(/^lampV must be finite and not below 0, got -1$/);
  });
});
