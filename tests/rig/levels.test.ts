import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fullLevel, lowered, rearLoadOhm, unloadedFullV } from '../../src/rig/levels.ts';
import { expectClose } from '../compute/close.ts';
import { anyRig } from './any-rig.ts';

/*
 * (supply − 2.2 V) / √2 across the pair and U² / Z in the speaker (Joule's law); 2.2 V of loss and a profile that is 7 dB
 * lower are from memory of the trade, no published source. Worked by hand.
 */
describe('what the head unit gives', () => {
  it.each([
    [14.2, 4, 8.485, 18],
    [13.8, 4, 8.202, 16.82],
    [12.6, 4, 7.354, 13.52],
    [12, 4, 6.93, 12.005],
    [14.2, 2, 8.485, 36],
    [14.2, 8, 8.485, 9],
  ])('at %f V into %i Ω is %f V and %f W', (supplyRunningV, frontRatedOhm, levelV, powerW) => {
    const full = fullLevel({ supplyRunningV, frontRatedOhm }, 'front');
    expectClose(full.levelV, levelV, 2e-4);
    expectClose(full.powerW, powerW, 2e-4);
  });
  it('is 3.79 V and 3.59 W, a fifth, with a profile that is 7 dB lower', () => {
    const full = fullLevel({ supplyRunningV: 14.2, rearRatedOhm: 4 }, 'rear');
    const left = lowered({ loweredByDb: 7, rearRatedOhm: 4 }, 'rear');
    expectClose(left.levelV, 3.79, 1e-3);
    expectClose(left.powerW, 3.59, 1e-3);
    expectClose(left.powerW / full.powerW, 10 ** -0.7);
  });
  it('is a little more into an amplifier’s input than into a speaker', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        expect(unloadedFullV(rig)).toBeGreaterThan(fullLevel(rig, 'front').levelV);
      }),
    );
  });
  it('keeps volts, watts and ohms in step on every bike', () => {
    fc.assert(
      fc.property(anyRig, fc.constantFrom('front' as const, 'rear' as const), (rig, axle) => {
        // Equal speakers side by side divide the ohms by their number, in a row they multiply them.
        const count = Math.round(rig.rearPerChannel ?? 1);
        const rear = rig.rearWiring === 'series' ? count : 1 / count;
        const ohm = axle === 'front' ? (rig.frontRatedOhm ?? 4) : (rig.rearRatedOhm ?? 4) * rear;
        const full = fullLevel(rig, axle);
        for (const { levelV, powerW } of [full, lowered(rig, axle)]) expectClose(levelV ** 2 / ohm, powerW);
      }),
    );
  });
});

describe('the load of a rear channel', () => {
  // Ohm's law: equal resistances in a row add up, side by side they divide.
  it.each([
    [{ rearRatedOhm: 4, rearPerChannel: 1 }, 4],
    [{ rearRatedOhm: 4, rearPerChannel: 2, rearWiring: 'series' }, 8],
    [{ rearRatedOhm: 4, rearPerChannel: 2, rearWiring: 'parallel' }, 2],
    [{ rearRatedOhm: 4, rearPerChannel: 2 }, 2],
  ] as const)('of %o is %f Ω', (rig, ohm) => expect(rearLoadOhm(rig)).toBe(ohm));
});
