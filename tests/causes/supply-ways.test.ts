import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Figure } from '../../src/causes/figure.ts';
import { figureText } from '../../src/causes/figure.ts';
import { healthyDropV, healthyInWords, lampDrewA, readFigures } from '../../src/causes/supply-ways.ts';
import { supplyUnderLoad } from '../../src/steps/supply/supply-under-load.ts';
import { expectClose } from '../compute/close.ts';
import { anyRig } from '../rig/any-rig.ts';
import { found, KNOWN, UNKNOWN } from './found.ts';

const written = (figures: readonly Figure[]) => Object.fromEntries(figures.map((one) => [one.id, figureText(one)]));
const read = (values: Readonly<Record<string, number>>) => found(KNOWN, { 'supply-under-load': values });

describe('what a sound way loses with the lamp', () => {
  // 5 A × (1.16 × 17.241 nΩ m × 1.6 m / 8.37 mm² + 6 mΩ) + 20 mV, and 0.9 m + 2.5 mΩ. Joints and digit: trade.
  it('is 69 mV on the positive and 43 mV on the ground of this bike', () => {
    expectClose(healthyDropV(found(KNOWN), 'plus'), 0.0691, 1e-3);
    expectClose(healthyDropV(found(KNOWN), 'ground'), 0.0432, 2e-3);
    expect(healthyInWords(found(KNOWN), 'plus')).toBe('below 0.069 V');
  });
  it('is more where nobody knows the lead', () => {
    expect(healthyDropV(found(UNKNOWN), 'plus')).toBeGreaterThan(healthyDropV(found(KNOWN), 'plus'));
  });
  it('is what the question says, word for word, on any bike', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        const f = found(rig);
        const most = (way: 'plus' | 'ground') => healthyInWords(f, way).replace('below ', '');
        expect(supplyUnderLoad.healthy({}, f)).toContain(
          `at most ${most('plus')} on positive and ${most('ground')} on ground`,
        );
      }),
    );
  });
});

describe('what was read of a way', () => {
  it('is its resistance by the current that the lamp drew at the volts left on it', () => {
    // 5 A × (12 / 12)^0.55: 0.6 V at 5 A are 0.12 Ω; from 12.6 V to 10.5 V that is 17.5 A, written with two digits.
    expect(written(readFigures(read({ batteryV: 12.6, ampV: 12, plusDropV: 0.6, groundDropV: 0 }), 'plus'))).toEqual({
      'plus-drop-read': '0.6 V',
      'plus-resistance': '0.12 Ω',
      'plus-cuts-out-from': '18 A',
    });
  });
  it('is 3 Ω, and not 1.6 Ω, where the lamp is dim at 4 V', () => {
    // (4 / 12)^0.55 × 5 A = 2.73 A; 8.2 V / 2.73 A = 3.0 Ω.
    const f = read({ batteryV: 12.2, ampV: 4, plusDropV: 8.2, groundDropV: 0 });
    expectClose(lampDrewA(f) ?? 0, 2.733, 1e-3);
    expect(written(readFigures(f, 'plus'))['plus-resistance']).toBe('3 Ω');
  });
  it('has no resistance where the lamp was dark, and nothing where nothing was lost or read', () => {
    const dark = read({ batteryV: 12.6, ampV: 0.1, plusDropV: 12.5, groundDropV: 0 });
    expect(written(readFigures(dark, 'plus'))).toEqual({ 'plus-drop-read': '12.5 V' });
    expect(readFigures(dark, 'ground')).toEqual([]);
    expect(readFigures(found(KNOWN), 'plus')).toEqual([]);
  });
  it('names no current at which it cuts out where the battery itself is at the cut-out', () => {
    const empty = read({ batteryV: 10.4, ampV: 9.9, plusDropV: 0.5, groundDropV: 0 });
    expect(Object.keys(written(readFigures(empty, 'plus')))).toEqual(['plus-drop-read', 'plus-resistance']);
  });
});
