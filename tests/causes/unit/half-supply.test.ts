import { describe, expect, it } from 'vitest';
import { inputDc } from '../../../src/causes/amp-input/input-dc.ts';
import { unitOutputGrounded } from '../../../src/causes/unit/unit-output-grounded.ts';
import { figuresOf, ON_AMP, ON_UNIT, onBike } from '../on-bike.ts';

// 0.40 to 0.55 of the supply on each wire, within 0.5 V of each other: common practice, no published source.
describe('a speaker wire of the head unit on ground', () => {
  it('is told by the DC on it: 5.0 to 6.9 V of 12.6 V on a sound one', () => {
    expect(figuresOf(unitOutputGrounded, onBike(ON_UNIT))).toEqual({
      'half-supply-healthy': '5.0 to 6.9 V',
      'pair-difference-healthy': 'at most 0.5 V',
    });
  });
  it('takes the battery that was read, and shows what was read on the two wires', () => {
    const read = { 'half-supply': { batteryV: 12, plusV: 5.7, minusV: 0.1 } };
    expect(figuresOf(unitOutputGrounded, onBike(ON_UNIT, {}, read))).toMatchObject({
      'half-supply-healthy': '4.8 to 6.6 V',
      'one-wire-dc': '5.7 V',
      'other-wire-dc': '0.1 V',
    });
  });
  it('names the same volts in the check after the cure', () => {
    expect(unitOutputGrounded.remedy(onBike(ON_UNIT)).proofOfCure.byMeter).toMatch(
      /5\.0 to 6\.9 V on each wire, the two wires of a pair within 0\.5 V/,
    );
  });
});

describe('DC from the head unit on an input', () => {
  it('is the difference between the two wires of a pair, at most 0.5 V on a sound one', () => {
    const read = { 'half-supply': { batteryV: 12.6, plusV: 6.1, minusV: 3.2 } };
    expect(figuresOf(inputDc, onBike(ON_AMP, {}, read))).toEqual({
      'one-wire-dc': '6.1 V',
      'other-wire-dc': '3.2 V',
      'half-supply-healthy': '5.0 to 6.9 V',
      'pair-difference-healthy': 'at most 0.5 V',
    });
  });
  it('is mended at the head unit, and no amplifier is bought for it', () => {
    const { repair, notBuy } = inputDc.remedy(onBike(ON_AMP));
    expect(repair).toEqual([{ do: 'repair-unit' }]);
    expect(notBuy[0]).toMatch(/^An amplifier/);
  });
});
