import { describe, expect, it } from 'vitest';
import { rangeTooSensitive } from '../../../src/causes/amp-input/range-too-sensitive.ts';
import { highpassOff } from '../../../src/causes/amplifier/highpass-off.ts';
import { bassMasked } from '../../../src/causes/settings/bass-masked.ts';
import { toneControlsUp } from '../../../src/causes/settings/tone-controls-up.ts';
import { coilRubbing } from '../../../src/causes/speakers/coil-rubbing.ts';
import { speakerUnderrated } from '../../../src/causes/speakers/speaker-underrated.ts';
import { amplifiedWrongOne } from '../../../src/causes/unit/amplified-wrong-one.ts';
import { eqByDesign } from '../../../src/causes/unit/eq-by-design.ts';
import { unalteredWithAmp } from '../../../src/causes/unit/unaltered-with-amp.ts';
import { unitDrivenTooFar } from '../../../src/causes/unit/unit-driven-too-far.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import { answered, figuresFor, found, KNOWN, labelsFor } from '../found.ts';

/** Fairing speakers of 4 Ω on the head unit: 14.2 V running, a boost of 13 dB. */
const ON_UNIT = EXAMPLE_RIGS['fork-fairing'];

describe('the highest clean level, and what a boost leaves of it', () => {
  it('is (14.2 − 2.2) ÷ √2 = 8.49 V or 18 W into 4 Ω; 13 dB under it voices are at 1.9 V, 0.9 W, a twentieth', () => {
    // A fixed loss of 2.2 V: common practice, no published source. The rest is Joule’s law and the decibel.
    expect(figuresFor(unitDrivenTooFar, ON_UNIT)).toMatchObject({
      'highest-clean': '8.5 V',
      'highest-clean-power': '18 W',
      'headroom-lost': '13 dB',
      'voices-at-limit': '1.9 V',
      'voices-power': '0.9 W',
      'boost-power': '5 %',
    });
  });
  it('into an amplifier loses less, and no boost stands in it where none is wanted', () => {
    // (14.2 − 0.8) ÷ √2 = 9.48 V: from memory of the trade.
    const figures = figuresFor(unitDrivenTooFar, KNOWN);
    expect(figures).toMatchObject({ 'highest-clean': '9.5 V' });
    expect(figures).not.toHaveProperty('headroom-lost');
    expect(figuresFor(unalteredWithAmp, KNOWN)).toMatchObject({ 'headroom-lost': '13 dB', 'lowered-level': '3.8 V' });
  });
  it('is read beside it where it was read', () => {
    const read = { 'unit-at-top': { v80V: 8.62, v400V: 3.1 } };
    expect(figuresFor(unitDrivenTooFar, ON_UNIT, read)).toMatchObject({ 'read-80': '8.62 V', 'read-400': '3.1 V' });
  });
});

describe('what bass asks for', () => {
  it('is four and ten times the power for 6 and 10 dB', () => {
    // 10^0.6 = 3.98 and 10^1 = 10: the definition of the decibel.
    expect(figuresFor(toneControlsUp, KNOWN)).toEqual({ 'lift-6': '400 %', 'lift-10': '1000 %' });
  });
  it('is way: a cone of 135 cm² with 4 mm follows 90 W at 88 dB a watt down to some 130 Hz, a tenth of it to 72 Hz', () => {
    /*
     * p = √2 π ρ f² S x, a small source in a baffle (Kinsler et al., from memory): at 1 Hz 23.1 dB. 88 + 19.5 = 107.5 dB,
     * so f = 10^((107.5 − 23.1) ÷ 40) = 129 Hz, and 10 dB less is a factor of 10^(1 ÷ 4) = 1.78.
     */
    for (const cause of [highpassOff, speakerUnderrated])
      expect(figuresFor(cause, KNOWN)).toMatchObject({ 'way-ends-full': '130 Hz', 'way-ends-music': '72 Hz' });
    expect(figuresFor(highpassOff, KNOWN)).toMatchObject({ 'high-pass': '80 to 100 Hz' });
  });
  it('fits into an input range that holds the loudest step', () => {
    expect(figuresFor(rangeTooSensitive, KNOWN)).toMatchObject({
      'comes-in-full': '9.5 V',
      'comes-in-lowered': '3.8 V',
    });
  });
});

describe('a profile in front of an amplifier that was made for it', () => {
  const made = (needs: 'any' | 'unaltered') => ({ ...KNOWN, amps: [{ ...KNOWN.amps?.[0], needs }] });
  it('stays, and range, filter and gain are set; any other amplifier gets a lowered one', () => {
    const doneTo = (needs: 'any' | 'unaltered') =>
      unalteredWithAmp.remedy(found(made(needs))).repair.map((one) => one.do);
    expect(doneTo('unaltered')).toEqual(['set-selector', 'set-filter', 'set-gain']);
    expect(doneTo('any')).toEqual(['select-profile', 'set-gain']);
  });
  it('is asked for before anybody pays, where nobody knows', () => {
    const { amps = [] } = KNOWN;
    const unknown = { ...KNOWN, amps: amps.map(({ needs: _, ...amp }) => amp) };
    expect(unalteredWithAmp.remedy(found(unknown)).readFirst).toContain('made-for');
  });
});

describe('a speaker that is damaged', () => {
  it('is the one that was heard, and only that one', () => {
    expect(coilRubbing.remedy(answered({ 'where-harsh': 'rear-left' })).repair).toEqual([
      { do: 'replace-speaker', where: 'rear-left' },
    ]);
  });
});

describe('what the engine changes', () => {
  const FACTS = { 'meter-digit': { option: '0.001' } } as const;
  const READ = {
    'tones-off': { v80V: 2.2, v400V: 0.5 },
    'tones-running': { v80V: 2.2, v400V: 0.35 },
  };
  const numbersOf = (digit: '0.001' | '0.1') =>
    eqByDesign.remedy(found(KNOWN, READ, { ...FACTS, 'meter-digit': { option: digit } })).numbers;
  const band = (digit: '0.001' | '0.1', id: string) => {
    const value = numbersOf(digit).find((figure) => figure.id === id)?.value;
    return Array.isArray(value) ? (value as readonly [number, number]) : expect.fail(id);
  };
  it('is 20 lg (2.2 ÷ 0.35) ÷ (2.2 ÷ 0.5) = 3.1 dB at 80 Hz, and 20 lg (0.35 ÷ 0.5) = −3.1 dB at 400 Hz', () => {
    const [low, high] = band('0.001', 'moved-80');
    expect((low + high) / 2).toBeCloseTo(3.098, 3);
    const [low400, high400] = band('0.001', 'moved-400');
    expect((low400 + high400) / 2).toBeCloseTo(-3.098, 3);
  });
  it('is known as far as the digits of the meter go: 0.06 dB with thousandths, several dB with tenths', () => {
    // A digit on 0.35 V is 0.29 % or 0.025 dB with thousandths, 29 % or 2.2 dB with tenths.
    const halfWidth = (digit: '0.001' | '0.1') => {
      const [low, high] = band(digit, 'moved-80');
      return (high - low) / 2;
    };
    expect(halfWidth('0.001')).toBeCloseTo(0.0501, 3);
    expect(halfWidth('0.1')).toBeGreaterThan(4);
  });
  it('is left out where nothing was read', () => {
    expect(figuresFor(amplifiedWrongOne, KNOWN)).toEqual({ 'same-within': '1.6 dB', 'lowered-by': '7 dB' });
  });
  it('is no part of it where wind covers the bass: 90 dBA at 40 mph, 102 at 65, six days’ allowance in an hour', () => {
    // Binnington et al. 1993: 90 dBA at 40 mph, 112 at 100. NIOSH 98-126: 85 dBA for 8 h, half for each 3 dB.
    expect(figuresFor(bassMasked, KNOWN)).toMatchObject({
      'wind-40': '90 dB',
      'wind-65': '100 dB',
      'dose-65': '590 %',
    });
    expect(labelsFor(bassMasked, KNOWN)['wind-65']).toMatch(/dBA/);
  });
});
