import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HALF_SUPPLY_PAIR_DIFFERENCE_V, halfSupplyBandV } from '../../src/compute/half-supply.ts';
import { expectClose } from './close.ts';

describe('halfSupplyBandV', () => {
  // Common practice, no published source: only the arithmetic is checked here.
  it('gives 5.04 to 6.93 V at 12.6 V (worked by hand)', () => {
    const { lowV, highV } = halfSupplyBandV({ supplyV: 12.6 });
    expectClose(lowV, 5.04);
    expectClose(highV, 6.93);
  });
  it('holds exactly half of any supply, with room for the allowed difference of a pair from 10 V up', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 16, noNaN: true }), (supplyV) => {
        const { lowV, highV } = halfSupplyBandV({ supplyV });
        expect(lowV).toBeLessThan(supplyV / 2 - HALF_SUPPLY_PAIR_DIFFERENCE_V / 2);
        expect(highV).toBeGreaterThan(supplyV / 2 + HALF_SUPPLY_PAIR_DIFFERENCE_V / 2);
      }),
    );
  });
  it('refuses a unit without supply, which has no half of it', () => {
    expect(() => halfSupplyBandV({ supplyV: 0 })).toThrow(/^supplyV must be finite and above 0, got 0$/);
  });
});
