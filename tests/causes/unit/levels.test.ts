import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fullLevel, lowered, rearLoadOhm, unloadedFullV } from '../../../src/rig/levels.ts';
import { expectClose } from '../../compute/close.ts';
import { anyRig } from '../../rig/any-rig.ts';
import { ON_UNIT } from '../on-bike.ts';

/*
 * (supply − 2.2 V) / √2 across the pair and U² / Z in the speaker (Joule's law); 2.2 V of loss, 0.8 V without a load and a
 * profile that is 7 dB lower are from memory of the trade, no published source. Worked by hand.
 */
describe('what the head unit gives', () => {
  it.each([
    [14.2, 4, 8.485, 18],
    [13.8, 4, 8.202, 16.82],
    [12.6, 4, 7.354, 13.52],
    [12, 4, 6.93, 12.005],
    [14.2, 2, 8.485, 36],
    [14.2, 8, 8.485, 9],
  ])('at %f V into %i Ω is %f V and %f W', (supplyRunningV, frontRatedOhm, volts, watts) => {
    const { levelV, powerW } = fullLevel({ supplyRunningV, frontRatedOhm }, 'front');
    expectClose(levelV, volts, 1e-4);
    expectClose(powerW, watts, 1e-3);
  });
  it('is 9.48 V into an amplifier, which draws next to nothing: (14.2 − 0.8) / √2', () => {
    expectClose(unloadedFullV({ supplyRunningV: 14.2 }), 9.475, 1e-4);
  });
  it('is 3.79 V and 3.6 W, a fifth, with a profile that is 7 dB lower', () => {
    const full = fullLevel(ON_UNIT, 'rear');
    const { levelV, powerW } = lowered(ON_UNIT, 'rear');
    expectClose(levelV, 3.79, 1e-3);
    expectClose(powerW, 3.59, 1e-3);
    expectClose(powerW / full.powerW, 10 ** -0.7);
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
  it('sees 2 Ω where two speakers of 4 Ω hang on a channel and nobody said how', () => {
    expect(rearLoadOhm({ rearRatedOhm: 4, rearPerChannel: 2 })).toBe(2);
    expect(rearLoadOhm({ rearRatedOhm: 4, rearPerChannel: 2, rearWiring: 'series' })).toBe(8);
  });
});
