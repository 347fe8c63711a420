import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { battery } from '../../src/world/elements/battery.ts';
import { charging, REGULATOR_OHM } from '../../src/world/elements/charging.ts';
import { contact } from '../../src/world/elements/contact.ts';
import { powerLoad } from '../../src/world/elements/power-load.ts';
import { resistor } from '../../src/world/elements/resistor.ts';
import { currentSource, voltageSource } from '../../src/world/elements/source.ts';
import { type Nonlinear, solveNonlinear } from '../../src/world/nonlinear.ts';
import { expectClose } from '../compute/close.ts';
import { evenly } from '../compute/evenly.ts';
import { network } from './solved.ts';

const behind = (openV: number, ohm: number, load: Nonlinear) =>
  solveNonlinear(network([battery('supply', ['amp', 'ground'], { openV, internalOhm: ohm })]), [load]);
const load = (powerW: number, idleA = 0) => powerLoad('amp', ['amp', 'ground'], { powerW, idleA });
const voltsAt = (solution: ReturnType<typeof behind>, node: string) => {
  if (!solution.ok) throw new Error(JSON.stringify(solution));
  return solution.voltageV(node).re;
};

describe('powerLoad', () => {
  // V = (E' + √(E'² − 4 P R)) / 2 with E' = E − idle × R: the root of V = E − R (idle + P / V) that a load falls to.
  it('meets the closed form of a power behind a resistance', () => {
    fc.assert(
      fc.property(evenly(10, 15), evenly(0.01, 1), evenly(0, 2), evenly(0.001, 0.999), (openV, ohm, idleA, share) => {
        const leftV = openV - idleA * ohm;
        const powerW = share * (leftV ** 2 / (4 * ohm));
        expectClose(
          voltsAt(behind(openV, ohm, load(powerW, idleA)), 'amp'),
          (leftV + Math.sqrt(leftV ** 2 - 4 * powerW * ohm)) / 2,
          1e-7,
        );
      }),
    );
  });
  it('takes 78 W through 0.6 Ω from 13.8 V, and has no point at 80 W: 13.8² / (4 × 0.6) = 79.35 W is the most', () => {
    expectClose(voltsAt(behind(13.8, 0.6, load(78)), 'amp'), (13.8 + Math.sqrt(13.8 ** 2 - 4 * 78 * 0.6)) / 2);
    expect(behind(13.8, 0.6, load(80))).toMatchObject({ ok: false, reason: 'no-operating-point', element: 'amp' });
  });
  it('finds a point just below the limit and none just above, at any supply', () => {
    fc.assert(
      fc.property(evenly(10, 15), evenly(0.01, 1), (openV, ohm) => {
        const mostW = openV ** 2 / (4 * ohm);
        expect(behind(openV, ohm, load(0.9999 * mostW)).ok).toBe(true);
        expect(behind(openV, ohm, load(1.0001 * mostW)).ok).toBe(false);
      }),
    );
  });
  it('takes its idle current alone when it plays nothing', () => {
    expectClose(voltsAt(behind(12.6, 1, load(0, 0.9)), 'amp'), 11.7);
  });
  it('says which of two amplifiers brings the supply down', () => {
    const feed = [
      battery('supply', ['post', 'ground'], { openV: 12.6, internalOhm: 0.02 }),
      contact('good', ['post', 'one'], 0.01),
      contact('bad', ['post', 'two'], 1),
    ];
    const amps = ['one', 'two'].map((at) => powerLoad(at, [at, 'ground'], { powerW: 100, idleA: 1 }));
    expect(solveNonlinear(network(feed), amps)).toMatchObject({ reason: 'no-operating-point', element: 'two' });
  });
  it('refuses a negative power by name before it solves', () => {
    expect(behind(12.6, 0.1, load(-5))).toEqual({
      ok: false,
      reason: 'bad-value',
      element: 'amp',
      value: 'powerW -5',
      steps: 0,
    });
  });
});

describe('charging', () => {
  const bike = (limitA: number, loadA: number, openV = 12.6) =>
    solveNonlinear(
      network([
        battery('battery', ['plus', 'ground'], { openV, internalOhm: 0.02 }),
        currentSource('bike', ['plus', 'ground'], loadA),
      ]),
      [charging('stator', ['plus', 'ground'], { setV: 14.2, limitA })],
    );
  it('holds its volts while it makes enough, less what the regulator gives way', () => {
    const current = (14.2 - 12.6) / (0.02 + REGULATOR_OHM);
    expectClose(voltsAt(bike(200, 0), 'plus'), 14.2 - current * REGULATOR_OHM);
  });
  it('gives 22 A at idle and lets the battery pay for what is taken above: 12.6 − 8 × 0.02 = 12.44 V at 30 A', () => {
    expectClose(voltsAt(bike(22, 30), 'plus'), 12.44);
  });
  it('gives nothing to a battery that stands higher, and nothing with the engine off', () => {
    expectClose(voltsAt(bike(48, 0, 14.6), 'plus'), 14.6);
    expectClose(voltsAt(bike(0, 8), 'plus'), 12.44);
  });
  it('is in exactly one of its three states, on any battery under any load', () => {
    fc.assert(
      fc.property(evenly(11, 13.5), evenly(0.005, 0.3), evenly(0, 60), evenly(0, 60), (openV, ohm, limitA, loadA) => {
        const solution = solveNonlinear(
          network([
            battery('battery', ['plus', 'ground'], { openV, internalOhm: ohm }),
            currentSource('bike', ['plus', 'ground'], loadA),
          ]),
          [charging('stator', ['plus', 'ground'], { setV: 14.2, limitA })],
        );
        const volts = voltsAt(solution, 'plus');
        const given = Math.min(limitA, Math.max(0, (14.2 - volts) / REGULATOR_OHM));
        expect(Math.abs(volts - (openV + ohm * (given - loadA)))).toBeLessThan(1e-9);
      }),
      { numRuns: 500 },
    );
  });
  it('settles together with amplifiers that draw more the lower it gets', () => {
    fc.assert(
      fc.property(evenly(0, 60), evenly(0, 30), evenly(0, 250), (limitA, baseA, powerW) => {
        const solution = solveNonlinear(
          network([
            battery('battery', ['plus', 'ground'], { openV: 12.6, internalOhm: 0.015 }),
            currentSource('bike', ['plus', 'ground'], baseA),
            resistor('lead', ['plus', 'amp'], 0.01),
          ]),
          [charging('stator', ['plus', 'ground'], { setV: 14.2, limitA }), load(powerW, 1)],
        );
        expect(solution.ok).toBe(true);
        expect(solution.steps).toBeLessThan(20);
      }),
    );
  });
  it('refuses what the linear rules refuse', () => {
    const twice = [voltageSource('one', ['amp', 'ground'], 12), voltageSource('two', ['amp', 'ground'], 13)];
    expect(solveNonlinear(network(twice), [load(10)])).toMatchObject({ reason: 'source-loop', element: 'two' });
  });
});
