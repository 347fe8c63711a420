import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acUncertaintyV } from '../../src/compute/meter.ts';
import { BASIC_METER, bandRatio, digitAt, EXACT_METER, GOOD_METER, NO_LUCK, shown } from '../../src/world/meter.ts';
import { evenly } from '../compute/evenly.ts';

describe('shown', () => {
  it('rounds to the last digit of the meter: 0.27 V reads 0.3 V on a basic one', () => {
    expect(shown(BASIC_METER, 'ac', 0.27, NO_LUCK)).toBeCloseTo(0.3, 12);
    expect(shown(GOOD_METER, 'ac', 0.27, NO_LUCK)).toBeCloseTo(0.27, 12);
  });
  it('goes to ten times the digit when a range is full: 2000 counts of 0.1 Ω end at 199.9 Ω', () => {
    expect(digitAt(BASIC_METER, 'ohm', 199.9)).toBe(0.1);
    expect(digitAt(BASIC_METER, 'ohm', 200)).toBe(1);
    expect(shown(BASIC_METER, 'ohm', 4321, NO_LUCK)).toBe(4320);
    expect(shown(GOOD_METER, 'dc', 12.647, NO_LUCK)).toBeCloseTo(12.65, 12);
  });
  it('lies no further off than the meter’s statement and half a digit', () => {
    fc.assert(
      fc.property(evenly(0, 20), evenly(-1, 1), evenly(-1, 1), (readingV, ofReading, digits) => {
        const off = Math.abs(shown(BASIC_METER, 'ac', readingV, { ofReading, digits }) - readingV);
        const { acDigitV: smallestDigitV } = BASIC_METER;
        expect(off).toBeLessThanOrEqual(acUncertaintyV({ readingV, smallestDigitV }) + smallestDigitV / 2 + 1e-9);
      }),
    );
  });
  it('is what there is, to a millionth, on an exact meter, however unlucky its owner', () => {
    fc.assert(
      fc.property(evenly(-20, 20), evenly(-1, 1), (volts, luck) => {
        const reads = shown(EXACT_METER, 'dc', volts, { ofReading: luck, digits: luck });
        expect(Math.abs(reads - volts)).toBeLessThan(1e-6);
      }),
    );
    expect(bandRatio(EXACT_METER, 4000)).toBe(1);
  });
  it('shows nothing where there is nothing, whatever its statement', () => {
    expect(shown(BASIC_METER, 'ac', 0, { ofReading: 1, digits: 1 })).toBe(0);
  });
  it('shows open above 10 MΩ, and never ohms or AC below zero', () => {
    expect(shown(BASIC_METER, 'ohm', 50e6, NO_LUCK)).toBe(Infinity);
    expect(shown(BASIC_METER, 'ohm', 0.1, { ofReading: -1, digits: -1 })).toBeGreaterThanOrEqual(0);
    expect(shown(BASIC_METER, 'ac', 0.1, { ofReading: -1, digits: -1 })).toBeGreaterThanOrEqual(0);
  });
  it('shows DC below zero', () => expect(shown(GOOD_METER, 'dc', -0.4, NO_LUCK)).toBeCloseTo(-0.4, 12));
});

describe('bandRatio', () => {
  it('leaves 80 and 400 Hz within 1.5 %, takes 3 dB at 1 kHz and nearly all at 4 kHz', () => {
    expect(bandRatio(BASIC_METER, 80)).toBeGreaterThan(0.985);
    expect(bandRatio(BASIC_METER, 400)).toBeGreaterThan(0.985);
    expect(bandRatio(BASIC_METER, 1000)).toBeCloseTo(Math.SQRT1_2, 3);
    expect(bandRatio(BASIC_METER, 4000)).toBeLessThan(0.07);
  });
});
