import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { findingsFrom } from '../../../src/steps/outcome.ts';
import type { Values } from '../../../src/steps/step.ts';
import { boostPower, fullLevel, loweredLevel, written } from '../../../src/verdicts/levels.ts';
import { ampChannelDead, ampOff } from '../../../src/verdicts/rear/amplifier.ts';
import { profileReverted, rearChannelsDisabled } from '../../../src/verdicts/rear/profile.ts';
import { coilOpen, lidContactsDirty, rearPlugOff } from '../../../src/verdicts/rear/run.ts';
import { faderOff } from '../../../src/verdicts/rear/settings.ts';
import type { Verdict } from '../../../src/verdicts/verdict.ts';
import { expectClose } from '../../compute/close.ts';
import { anyRig } from '../../rig/any-rig.ts';

const ON_UNIT: Rig = { ...EXAMPLE_RIGS['fork-fairing'], rearFitted: 'yes', rearFedBy: 'unit', rearRatedOhm: 4 };
const ON_AMP: Rig = EXAMPLE_RIGS['frame-fairing'];

type Outcomes = Readonly<Record<string, string>>;
const remedyOf = (verdict: Verdict, rig: Rig, outcomes: Outcomes = {}, values: Readonly<Record<string, Values>> = {}) =>
  verdict.remedy(
    findingsFrom(
      { rig, facts: { 'meter-digit': { option: '0.01' } } },
      (id) => outcomes[id],
      (id) => values[id] ?? {},
    ),
  );
const numbersOf = (...args: Parameters<typeof remedyOf>) =>
  Object.fromEntries(remedyOf(...args).numbers.map(({ label, value }) => [label, value]));

/*
 * (supply − 2.2 V) / √2 across the pair and U² / Z in the speaker (Joule's law); 2.2 V of loss and a profile that is 7 dB
 * lower are from memory of the trade, no published source. Worked by hand.
 */
describe('what the head unit gives', () => {
  it.each([
    [14.2, 4, '8.49 V · 18 W'],
    [13.8, 4, '8.2 V · 17 W'],
    [12.6, 4, '7.35 V · 14 W'],
    [12, 4, '6.93 V · 12 W'],
    [14.2, 2, '8.49 V · 36 W'],
    [14.2, 8, '8.49 V · 9 W'],
  ])('at %f V into %i Ω is %s', (supplyRunningV, frontRatedOhm, value) => {
    expect(written(fullLevel({ supplyRunningV, frontRatedOhm }, 'front'))).toBe(value);
  });
  it('is 3.79 V and 3.6 W, a fifth, with a profile that is 7 dB lower', () => {
    const [full, lowered] = [fullLevel(ON_UNIT, 'rear'), loweredLevel(ON_UNIT, 'rear')];
    expectClose(lowered.levelV, 3.79, 1e-3);
    expectClose(lowered.powerW, 3.59, 1e-3);
    expectClose(lowered.powerW / full.powerW, 10 ** -0.7);
  });
  it.each([
    [12, 15.849],
    [13, 19.953],
    [14, 25.119],
  ])(
    'has, by Lessons In Electric Circuits (“Decibels”), a bass boost of %i dB, %f times the power',
    (boostDb, times) => {
      expectClose(boostPower({ boostDb }), times, 5e-5);
    },
  );
  it('keeps volts, watts and ohms in step on every bike', () => {
    fc.assert(
      fc.property(anyRig, fc.constantFrom('front' as const, 'rear' as const), (rig, pair) => {
        // Equal speakers side by side divide the ohms by their number, in a row they multiply them.
        const count = Math.round(rig.rearPerChannel ?? 1);
        const rear = rig.rearWiring === 'series' ? count : 1 / count;
        const ohm = pair === 'front' ? (rig.frontRatedOhm ?? 4) : (rig.rearRatedOhm ?? 4) * rear;
        for (const { levelV, powerW } of [fullLevel(rig, pair), loweredLevel(rig, pair)]) {
          expectClose(levelV ** 2 / ohm, powerW);
        }
      }),
    );
  });
});

describe('switched-off rear channels', () => {
  it.each([rearChannelsDisabled, profileReverted])(
    '$id: four figures where the head unit drives the rear',
    (verdict) => {
      expect(numbersOf(verdict, ON_UNIT)).toEqual({
        'Front output, clean, engine running': '8.49 V · 18 W',
        'Rear output after the change': '8.49 V · 18 W',
        'With an amplified profile instead': '3.79 V · 3.6 W',
        'That would be': '7 dB quieter',
      });
      expect(numbersOf(verdict, { ...ON_UNIT, loweredByDb: 6, rearRatedOhm: 2 })).toMatchObject({
        'Rear output after the change': '8.49 V · 36 W',
        'With an amplified profile instead': '4.25 V · 9 W',
        'That would be': '6 dB quieter',
      });
    },
  );
  it('are proved only by a silent pair, with the history that fits', () => {
    const silent = { 'rear-pair': 'none', 'rear-pair-place': 'unit', 'unit-kind': 'factory' };
    expect(
      remedyOf(rearChannelsDisabled, ON_UNIT, { 'rear-pair': 'none', 'rear-history': 'never', 'delivered-with': 'two' })
        .certainty,
    ).toBe('likely');
    const added = { 'rear-history': 'never', 'delivered-with': 'two' };
    expect(remedyOf(rearChannelsDisabled, ON_UNIT, { ...silent, ...added }).certainty).toBe('proved');
    expect(remedyOf(rearChannelsDisabled, ON_UNIT, added).certainty).toBe('likely');
    // An amplifier may take everything from the front pair, and then silent rear outputs are normal.
    const amplified = remedyOf(rearChannelsDisabled, ON_AMP, { ...silent, ...added });
    expect(amplified.certainty).toBe('likely');
    expect(amplified.mayAlsoBe?.[0]?.what).toMatch(/everything from the front pair/);
    expect(remedyOf(rearChannelsDisabled, ON_AMP, { ...silent, ...added, 'rear-inputs': 'own' }).certainty).toBe(
      'proved',
    );
    expect(remedyOf(rearChannelsDisabled, ON_UNIT, { ...silent, ...added, 'delivered-with': 'four' }).certainty).toBe(
      'likely',
    );
    expect(remedyOf(rearChannelsDisabled, ON_UNIT, { ...silent, ...added, 'rear-history': 'stopped' }).certainty).toBe(
      'likely',
    );
    const worked = { 'rear-history': 'stopped', 'last-change': 'workshop' };
    expect(remedyOf(profileReverted, ON_UNIT, { ...silent, ...worked }).certainty).toBe('proved');
    expect(remedyOf(profileReverted, ON_UNIT, worked).certainty).toBe('likely');
    expect(remedyOf(profileReverted, ON_UNIT, { ...silent, ...worked, 'last-change': 'nothing' }).certainty).toBe(
      'likely',
    );
  });
  it('warn of an amplified profile without an amplifier, and never with one', () => {
    const without = remedyOf(rearChannelsDisabled, ON_UNIT);
    const behind = remedyOf(rearChannelsDisabled, ON_AMP);
    expect(without.ifDoneAnyway).toMatch(/about one fifth of the power and the bass boost is gone/);
    expect(without.notBuy.join()).toMatch(/amplified profile/);
    expect(behind.ifDoneAnyway).toBeUndefined();
    expect(behind.notBuy.join()).not.toMatch(/amplified profile/);
    // Full level and boosted bass will reach the amplifier: common practice, no published source.
    expect(behind.fix.join(' ')).toMatch(/gain to minimum, speaker-level range, high-pass on/);
  });
});

// 0.7 to 0.95 of the rated ohms cold, from memory; copper of 1.7241e-8 Ω m (IEC 60028).
describe('a rear run', () => {
  it.each([coilOpen, rearPlugOff, lidContactsDirty])('$id: coil and wires of this bike', (verdict) => {
    expect(numbersOf(verdict, ON_AMP)).toMatchObject({
      'One coil, cold': '2.8 to 3.8 Ω',
      'Both wires of the run': '36 mΩ', // 2 × 2.2 m × 1.7241e-8 / 2.08e-6
    });
    // 2 × 2.8 m in the trunk.
    expect(numbersOf(verdict, EXAMPLE_RIGS.trunk)).toMatchObject({
      'One coil, cold': '1.4 to 1.9 Ω',
      'Both wires of the run': '46 mΩ',
    });
    expect(numbersOf(verdict, {})).toMatchObject({ 'One coil, cold': '1.4 to 3.8 Ω' });
  });
});

// I = average × channels × P / (efficiency × U); a third of full sine power and 0.72 are from memory, no published source.
describe('an amplifier that stays off', () => {
  it('draws 12 A for four channels of 90 W and 9.8 A for two of 150 W, and loses millivolts in its lead', () => {
    expect(numbersOf(ampOff, ON_AMP)).toEqual({
      'Current with dense loud music': '12 A', // 4 × 90 W / 3 / (0.72 × 14.2 V) = 11.7 A
      'Lost in the plus lead alone at that current': '0.039 V', // 11.7 A × 1.6 m × 1.7241e-8 / 8.37e-6
      'Main fuse on 8.37 mm² of copper or more, at most': '40 A',
      'Remote terminal when on': 'above 11.6 V',
    });
    expect(numbersOf(ampOff, EXAMPLE_RIGS.trunk)).toEqual({
      'Current with dense loud music': '9.8 A', // 2 × 150 W / 3 / (0.72 × 14.2 V)
      'Lost in the plus lead alone at that current': '0.03 V', // 9.78 A × 2.4 m × 1.7241e-8 / 13.3e-6
      'Main fuse on 13.3 mm² of copper or more, at most': '60 A',
      'Remote terminal when on': 'above 11.6 V',
    });
  });
});

describe('the gain of an amplifier', () => {
  it('is set to √(P Z), and to 17.3 V for 75 of 90 W', () => {
    expect(numbersOf(ampChannelDead, ON_AMP)).toEqual({
      'Output to set, 90 W into 4 Ω': '19 V',
      'The same with a margin': '17.3 V',
      'Volts out over volts in, full level': 'about 2.0 times',
      'The same with an amplified profile': 'about 4.5 times', // 2.0 × 10^(7 / 20)
    });
    // √(150 × 2) = 17.3 V, √(125 × 2) = 15.8 V, over 9.48 V.
    expect(numbersOf(ampChannelDead, EXAMPLE_RIGS.trunk)).toEqual({
      'Output to set, 150 W into 2 Ω': '17.3 V',
      'The same with a margin': '15.8 V',
      'Volts out over volts in, full level': 'about 1.8 times',
      'The same with an amplified profile': 'about 4.1 times',
    });
  });
});

describe('an amplifier on a line-level lead', () => {
  it('has volts to set and no ratio, since nobody knows what the converter makes', () => {
    const [amp] = EXAMPLE_RIGS['frame-fairing'].amps;
    expect(numbersOf(ampChannelDead, { ...ON_AMP, amps: [{ ...amp, input: 'line' }] })).toEqual({
      'Output to set, 90 W into 4 Ω': '19 V',
      'The same with a margin': '17.3 V',
    });
  });
});

describe('a fader that was off', () => {
  it('shows rear over front as it was read', () => {
    const values = { 'rear-pair': { frontV: 2, leftV: 0.5, rightV: 3 } };
    const { numbers, certainty } = remedyOf(faderOff, ON_UNIT, { 'rear-pair': 'uneven' }, values);
    expect(numbers[0]).toEqual({ label: 'Rear over front, now', value: '0.25 and 1.50' });
    expect(certainty).toBe('likely');
  });
  it('has no figure, and is proved, when ears found it', () => {
    const { numbers, certainty, mayAlsoBe } = remedyOf(faderOff, ON_UNIT, { 'fader-centre': 'cured' });
    expect(numbers).toEqual([]);
    expect(certainty).toBe('proved');
    expect(mayAlsoBe).toBeUndefined();
  });
});
