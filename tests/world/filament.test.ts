import { describe, expect, it } from 'vitest';
import { real } from '../../src/world/complex.ts';
import { COLD_RATIO, type Filament, filament, filamentA } from '../../src/world/elements/filament.ts';
import { resistor } from '../../src/world/elements/resistor.ts';
import { voltageSource } from '../../src/world/elements/source.ts';
import { solveNonlinear } from '../../src/world/nonlinear.ts';
import { expectClose } from '../compute/close.ts';
import { spiceVolts } from './spice.ts';

const HEAD_LAMP: Filament = { ratedV: 12, ratedA: 55 / 12 };
const TEST_LAMP: Filament = { ratedV: 12, ratedA: 5 };
const ohmAt = (lamp: Filament, volts: number) => volts / filamentA(lamp, volts);

/** Volts left of 12.6 V on a lamp behind some ohms. */
function leftV(seriesOhm: number): number {
  const elements = [voltageSource('e', ['top', '0'], real(12.6)), resistor('r', ['top', 'lamp'], seriesOhm)];
  const solved = solveNonlinear({ elements, reference: '0', frequencyHz: 0 }, [
    filament('l', ['lamp', '0'], TEST_LAMP),
  ]);
  return solved.ok ? solved.voltageV('lamp').re : expect.fail(solved.reason);
}

describe('a filament', () => {
  it('draws what it is rated for at the volts that it is rated for', () => {
    expectClose(filamentA(HEAD_LAMP, 12), 4.5833, 1e-4);
  });
  // Lamp rerating: current × (applied / design volts)^0.55. A third of the volts leaves 0.5465 of the current.
  it('of 55 W at 12 V draws 2.5 A at 4 V, by which it has 1.6 Ω there and not the 2.6 Ω of full light', () => {
    expectClose(filamentA(HEAD_LAMP, 4), 2.505, 1e-3);
    expectClose(ohmAt(HEAD_LAMP, 12), 2.618, 1e-3);
    expectClose(ohmAt(HEAD_LAMP, 4), 1.597, 1e-3);
  });
  // The same source prints power × (applied / design volts)^1.6, rounded: within 1 % of it at nine tenths of the volts.
  it('agrees with the power that is printed beside the current', () => {
    expectClose((0.9 * filamentA(HEAD_LAMP, 10.8)) / filamentA(HEAD_LAMP, 12), 0.9 ** 1.6, 0.01);
  });
  // Radiation: P ∝ T⁴ (Stefan–Boltzmann). Tungsten: R ∝ T^1.2 (from memory). So V²/R ∝ R^(4/1.2), and R ∝ V^0.46.
  it('agrees with radiation and the resistivity of tungsten within 2 % down to a third of its volts', () => {
    const exponent = 2 / (1 + 4 / 1.2);
    expectClose(ohmAt(HEAD_LAMP, 4) / ohmAt(HEAD_LAMP, 12), (1 / 3) ** exponent, 0.02);
  });
  it('has a thirteenth of its ohms when it is cold, whichever way round', () => {
    expectClose(ohmAt(HEAD_LAMP, 1e-3), COLD_RATIO * 2.618, 1e-3);
    expectClose(filamentA(HEAD_LAMP, -4), -filamentA(HEAD_LAMP, 4));
    expect(filamentA(HEAD_LAMP, 0)).toBe(0);
  });
  // (12.6 − 4) V over 5 A × (4 / 12)^0.55 = 2.733 A are 3.15 Ω; with the ohms of full light it would look like 5.2 Ω.
  it('is left 4 V of 12.6 V by a path of 3.15 Ω', () => expectClose(leftV(3.147), 4, 1e-3));
  it('is left the same by ngspice, which has the power law as a source', async () => {
    for (const seriesOhm of [0.01, 0.5, 3, 20]) {
      const theirs = await spiceVolts(
        // The law turned round, volts by current: as current by volts its slope at 0 V is without end.
        [
          'Ve top 0 dc 12.6',
          `Rr top meter ${seriesOhm}`,
          'Vm meter lamp dc 0',
          `Bl lamp 0 v=12*pow(abs(i(Vm))/5,${1 / 0.55})`,
        ],
        0,
      );
      expectClose(leftV(seriesOhm), theirs('lamp').re, 1e-3);
    }
  }, 60_000);
  it('is a cold piece of wire behind many ohms', () => {
    expectClose(leftV(10_000), (12.6 * COLD_RATIO * 2.4) / 10_000, 1e-3);
  });
});
