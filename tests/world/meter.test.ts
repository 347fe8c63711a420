import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acUncertaintyV } from '../../src/compute/meter.ts';
import { BASIC_METER, bandRatio, GOOD_METER, shown } from '../../src/world/meter.ts';
import { evenly } from '../compute/evenly.ts';

describe('shown', () => {
  it('rounds to the last digit of the meter: 0.27 V reads 0.3 V on a basic one', () => {
    expect(shown(BASIC_METER, 'ac', 0.27, 0)).toBeCloseTo(0.3, 12);
    expect(shown(GOOD_METER, 'ac', 0.27, 0)).toBeCloseTo(0.27, 12);
  });
  it('lies no further off than the meter’s statement and half a digit', () => {
    fc.assert(
      fc.property(evenly(0, 20), evenly(-1, 1), (readingV, luck) => {
        const off = Math.abs(shown(BASIC_METER, 'ac', readingV, luck) - readingV);
        const { acDigitV: smallestDigitV } = BASIC_METER;
        expect(off).toBeLessThanOrEqual(acUncertaintyV({ readingV, smallestDigitV }) + smallestDigitV / 2 + 1e-9);
      }),
    );
  });
  it('shows open above 10 MΩ, and never ohms or AC below zero', () => {
    expect(shown(BASIC_METER, 'ohm', 50e6, 0)).toBe(Infinity);
    expect(shown(BASIC_METER, 'ohm', 0, -1)).toBe(0);
    expect(shown(BASIC_METER, 'ac', 0, -1)).toBe(0);
  });
  it('shows DC below zero', () => expect(shown(GOOD_METER, 'dc', -0.4, 0)).toBeCloseTo(-0.4, 12));
});

describe('bandRatio', () => {
  it('leaves 80 and 400 Hz within 1.5 %, takes 3 dB at 1 kHz and nearly all at 4 kHz', () => {
    expect(bandRatio(BASIC_METER, 80)).toBeGreaterThan(0.985);
    expect(bandRatio(BASIC_METER, 400)).toBeGreaterThan(0.985);
    expect(bandRatio(BASIC_METER, 1000)).toBeCloseTo(Math.SQRT1_2, 3);
    expect(bandRatio(BASIC_METER, 4000)).toBeLessThan(0.07);
  });
});
