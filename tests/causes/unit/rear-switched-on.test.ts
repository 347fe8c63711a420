import { describe, expect, it } from 'vitest';
import type { Cause } from '../../../src/causes/cause.ts';
import { profileReverted } from '../../../src/causes/unit/profile-reverted.ts';
import { rearChannelsDisabled } from '../../../src/causes/unit/rear-channels-disabled.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { figuresOf, ON_AMP, ON_UNIT, onBike } from '../on-bike.ts';

const BOTH: readonly Cause[] = [rearChannelsDisabled, profileReverted];
const selection = (cause: Cause, rig: Rig) => cause.remedy(onBike(rig)).repair[0];

// The volts and watts of this test are worked by hand in levels.test.ts.
describe('rear channels that are off', () => {
  it.each(BOTH)('$id: front and rear at full level where the head unit drives the rear', (cause) => {
    expect(figuresOf(cause, onBike(ON_UNIT))).toEqual({
      'front-level': '8.5 V',
      'front-power': '18 W',
      'rear-level': '8.5 V',
      'rear-power': '18 W',
      'amplified-level': '3.8 V',
      'amplified-power': '3.6 W',
      'lowered-by': '7 dB',
      'rear-over-front-healthy': '70 to 140 %',
    });
    expect(figuresOf(cause, onBike({ ...ON_UNIT, loweredByDb: 6, rearRatedOhm: 8 }))).toMatchObject({
      'rear-power': '9 W',
      'amplified-level': '4.3 V',
      'amplified-power': '2.3 W', // 9 W × 10^−0.6
      'lowered-by': '6 dB',
    });
  });
  it.each(BOTH)('$id: no watts are promised into speakers that are too few ohms for a head unit', (cause) => {
    const two = onBike({ ...ON_UNIT, rearRatedOhm: 2 });
    expect(figuresOf(cause, two)).toMatchObject({ 'rear-load': '2 Ω', 'unit-least-load': 'at least 3.5 Ω' });
    expect(figuresOf(cause, two)).not.toHaveProperty('rear-power');
    expect(cause.remedy(two).fix[cause === profileReverted ? 2 : 0]).toMatch(/rear load is 2 Ω, too little/);
    const sideBySide = onBike({ ...ON_UNIT, rearPerChannel: 2, rearWiring: 'parallel' });
    expect(figuresOf(cause, sideBySide)).toMatchObject({ 'rear-load': '2 Ω' });
  });
  it.each(BOTH)('$id: behind an amplifier only the signal counts, and the gain is set after the visit', (cause) => {
    const { repair, fix } = cause.remedy(onBike(ON_AMP));
    expect(figuresOf(cause, onBike(ON_AMP))).toMatchObject({ 'front-level': '9.5 V', 'gain-output': '17.3 V' });
    expect(figuresOf(cause, onBike(ON_AMP))).not.toHaveProperty('rear-power');
    expect(repair.map((action) => action.do)).toEqual(['select-profile', 'set-gain']);
    // Full level and boosted bass may reach the amplifier: common practice, no published source.
    expect(fix.join(' ')).toMatch(/gain to minimum, speaker-level range, high-pass on/);
  });
  it.each(BOTH)('$id: warns of an amplified profile without an amplifier, and never with one', (cause) => {
    const without = cause.remedy(onBike(ON_UNIT));
    // A profile that is 7 dB lower leaves 10^−0.7 of the power.
    expect(without.ifDoneAnyway).toMatch(/about 20 % of the power, and the bass boost is gone/);
    expect(cause.remedy(onBike({ ...ON_UNIT, loweredByDb: 6 })).ifDoneAnyway).toMatch(/about 25 %/);
    expect(without.notBuy.join()).toMatch(/amplified profile/);
    expect(cause.remedy(onBike(ON_AMP)).ifDoneAnyway).toBeUndefined();
    expect(cause.remedy(onBike(ON_AMP)).notBuy.join()).not.toMatch(/amplified profile/);
  });
  it.each(BOTH)('$id: asks for a reading before a visit, until there is one', (cause) => {
    expect(cause.remedy(onBike(ON_UNIT)).notBuy[0]).toMatch(/^A visit, before 400 Hz has been measured/);
    expect(cause.remedy(onBike(ON_UNIT, { 'rear-pair': 'none' })).notBuy.join()).not.toMatch(/A visit before/);
  });
});

describe('a profile without rear channels', () => {
  it('only lacks them on a bike that never had another one', () => {
    for (const rig of [ON_UNIT, ON_AMP]) {
      expect(selection(rearChannelsDisabled, rig)).toEqual({ do: 'select-profile', rear: 'on' });
    }
  });
  it('was the one for amplifiers before, where every speaker hangs on one', () => {
    expect(selection(profileReverted, ON_AMP)).toEqual({
      do: 'select-profile',
      rear: 'on',
      level: 'lowered',
      boost: 'none',
      eq: 'same',
    });
  });
  it('was none with a lowered level where the head unit drives a pair, or an amplifier needs the full one', () => {
    const needsFull: Rig = { ...ON_AMP, amps: [{ ...ON_AMP.amps[0], needs: 'unaltered' }] };
    for (const rig of [ON_UNIT, needsFull, { ...ON_AMP, frontFedBy: 'unit' } as const]) {
      expect(selection(profileReverted, rig)).toEqual({ do: 'select-profile', rear: 'on' });
    }
  });
  it('is read before anybody is paid, on a bike that was built with rear speakers', () => {
    const fix = (rig: Rig) => rearChannelsDisabled.remedy(onBike(rig)).fix.join(' ');
    expect(fix({ ...ON_UNIT, deliveredWith: 'four' })).toMatch(/^Read the stored profile before you pay/);
    expect(fix(ON_UNIT)).not.toMatch(/Read the stored profile/);
  });
});
