import { describe, expect, it } from 'vitest';
import { FILAMENT_COLD_RATIO, lampA } from '../../src/compute/lamp.ts';
import { real } from '../../src/world/complex.ts';
import { type Filament, filament } from '../../src/world/elements/filament.ts';
import { resistor } from '../../src/world/elements/resistor.ts';
import { voltageSource } from '../../src/world/elements/source.ts';
import { solveNonlinear } from '../../src/world/nonlinear.ts';
import { expectClose } from '../compute/close.ts';
import { spiceVolts } from './spice.ts';

const TEST_LAMP: Filament = { ratedV: 12, ratedA: 5 };

/** Volts left of 12.6 V on a lamp behind some ohms. */
function leftV(seriesOhm: number): number {
  const elements = [voltageSource('e', ['top', '0'], real(12.6)), resistor('r', ['top', 'lamp'], seriesOhm)];
  const solved = solveNonlinear({ elements, reference: '0', frequencyHz: 0 }, [
    filament('l', ['lamp', '0'], TEST_LAMP),
  ]);
  return solved.ok ? solved.voltageV('lamp').re : expect.fail(solved.reason);
}

describe('a filament', () => {
  it('draws what the law says of its volts, whichever way round it hangs', () => {
    const lamp = filament('l', ['lamp', '0'], TEST_LAMP);
    for (const volts of [0.01, 0.5, 4, 12]) {
      expect(lamp.currentA(volts)).toBe(lampA({ ...TEST_LAMP, lampV: volts }));
      expect(lamp.currentA(-volts)).toBe(-lamp.currentA(volts));
    }
    expect(lamp.currentA(0)).toBe(0);
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
    expectClose(leftV(10_000), (12.6 * FILAMENT_COLD_RATIO * 2.4) / 10_000, 1e-3);
  });
});
