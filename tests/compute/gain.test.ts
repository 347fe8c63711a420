import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gainFromVoltageRatioDb } from '../../src/compute/decibel.ts';
import { GAIN_MARGIN_RATIO, gainRatio, gainTargetV } from '../../src/compute/gain.ts';
import { expectClose } from './close.ts';

const watts = fc.double({ min: 1, max: 1000, noNaN: true });

describe('gainTargetV', () => {
  it('gives 19.0 V for 90 W at 4 Ω (worked by hand: √360)', () => {
    expectClose(gainTargetV({ powerW: 90, loadOhm: 4 }), 18.9737, 1e-5);
  });
  it('gives 17.3 V with the cautious margin, which sets 75 of the 90 W (worked by hand: √300)', () => {
    expectClose(gainTargetV({ powerW: 90, loadOhm: 4, marginRatio: GAIN_MARGIN_RATIO }), 17.3205, 1e-5);
  });
  it('doubles when the power is four times as high', () => {
    fc.assert(
      fc.property(watts, (powerW) => {
        expectClose(gainTargetV({ powerW: 4 * powerW, loadOhm: 4 }), 2 * gainTargetV({ powerW, loadOhm: 4 }));
      }),
    );
  });
  it('takes the whole rated power at a margin of 1, and refuses more', () => {
    expectClose(gainTargetV({ powerW: 4, loadOhm: 4, marginRatio: 1 }), 4);
    expect(() => gainTargetV({ powerW: 4, loadOhm: 4, marginRatio: 1.01 })).toThrow(
      /^marginRatio must be from 0 to 1, got 1.01$/,
    );
    expect(() => gainTargetV({ powerW: 4, loadOhm: 4, marginRatio: 0 })).toThrow(
      /^marginRatio must be finite and above 0, got 0$/,
    );
  });
  it('refuses an amplifier of no power, which has nothing to set', () => {
    expect(() => gainTargetV({ powerW: 0, loadOhm: 4 })).toThrow(/^powerW must be finite and above 0, got 0$/);
  });
});

describe('gainRatio', () => {
  // Lessons In Electric Circuits, Semiconductors vol., "Decibels": 10 mV in, 1 V out.
  it('gives 100, which is 40 dB, for 10 mV in and 1 V out', () => {
    const ratio = gainRatio({ outputV: 1, inputV: 0.01 });
    expectClose(ratio, 100);
    expectClose(gainFromVoltageRatioDb({ voltageRatio: ratio }), 40);
  });
  it('does not change when both readings are low by the same share', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1, noNaN: true }), (share) => {
        expectClose(gainRatio({ outputV: 19 * share, inputV: 3.8 * share }), 5);
      }),
    );
  });
  it('gives 0 for a silent output and refuses a silent input', () => {
    expect(gainRatio({ outputV: 0, inputV: 1 })).toBe(0);
    expect(() => gainRatio({ outputV: 1, inputV: 0 })).toThrow(/^inputV must be finite and above 0, got 0$/);
    expect(() => gainRatio({ outputV: -1, inputV: 1 })).toThrow(/^outputV must be finite and not below 0, got -1$/);
  });
});
