import { describe, expect, it } from 'vitest';
import { splitOf } from '../../../src/causes/cause.ts';
import { ampGroundOpen } from '../../../src/causes/supply/amp-ground-open.ts';
import { ampGroundResistive } from '../../../src/causes/supply/amp-ground-resistive.ts';
import { ampTerminalLoose } from '../../../src/causes/supply/amp-terminal-loose.ts';
import { batteryLugLoose } from '../../../src/causes/supply/battery-lug-loose.ts';
import { bothLeadsBad } from '../../../src/causes/supply/both-leads-bad.ts';
import { fuseHolderBad } from '../../../src/causes/supply/fuse-holder-bad.ts';
import { mainFuseOpen } from '../../../src/causes/supply/main-fuse-open.ts';
import { plusLeadBroken } from '../../../src/causes/supply/plus-lead-broken.ts';
import { plusLeadChafed } from '../../../src/causes/supply/plus-lead-chafed.ts';
import { plusLeadTooThin } from '../../../src/causes/supply/plus-lead-too-thin.ts';
import { sharedGroundScrew } from '../../../src/causes/supply/shared-ground-screw.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { answered, figuresFor, found, KNOWN, type Known, TWO_AMPS, UNKNOWN } from '../found.ts';

const MM2 = 1e-6;
const CUT_OUT = { 'cut-out': '9.0 to 10.5 V' };
const doneTo = (cause: typeof mainFuseOpen, rig: Rig) => cause.remedy(found(rig)).repair;

/** What leads carry: of 10 to 14 gauge common practice, no published source, all below 33 CFR 183.425, table 5. */
const FUSE_TABLE = {
  'main-fuse-on-3.31': 'at most 20 A',
  'main-fuse-on-5.26': 'at most 30 A',
  'main-fuse-on-8.37': 'at most 40 A',
  'main-fuse-on-13.3': 'at most 70 A',
};

describe('an open main fuse', () => {
  // 40 A on 8 gauge: common practice; 360 W / (0.72 × 14.2 V) = 35 A, a third of it 12 A.
  it('shows what its lead carries and what the amplifier draws', () => {
    expect(figuresFor(mainFuseOpen, KNOWN)).toEqual({
      ...FUSE_TABLE,
      'dense-music-current': '12 A',
      'full-bass-current': '35 A',
    });
    expect(figuresFor(mainFuseOpen, UNKNOWN)).toMatchObject({ 'main-fuse-on-5.26': 'at most 30 A' });
    expect(figuresFor(mainFuseOpen, TWO_AMPS)).toMatchObject({ 'main-fuse-on-13.3': 'at most 70 A' });
  });
  it('gets the old rating, unless its lead is known to carry less', () => {
    const fuse = { do: 'renew-fuse', fuse: 'main', onceLampIsDark: true } as const;
    expect(doneTo(mainFuseOpen, KNOWN)).toEqual([{ ...fuse, fuseA: 40 }]);
    expect(doneTo(mainFuseOpen, UNKNOWN)).toEqual([fuse]);
    const overFused: Rig = { ...KNOWN, amps: [{ ...KNOWN.amps?.[0], mainFuseA: 60 }] };
    expect(doneTo(mainFuseOpen, overFused)).toEqual([{ ...fuse, fuseA: 40 }]);
  });
  it('opens again on a lead that full bass is too much for, and says with which lead it would not', () => {
    const thin: Rig = { ...KNOWN, amps: [{ ...KNOWN.amps?.[0], plusLeadM2: 3.31 * MM2, mainFuseA: 20 }] };
    expect(mainFuseOpen.remedy(found(thin)).background).toMatch(/8\.37 mm² of copper with a 40 A fuse/);
    expect(mainFuseOpen.remedy(found(KNOWN)).background).not.toMatch(/mm²/);
  });
  it('gets no further fuse once a new one opened, or a lamp in its place stayed bright', () => {
    for (const known of [{ 'spare-fuse': 'opens' }, { 'fuse-lamp': 'bright' }] as const) {
      const f = answered({ 'fuse-look': 'blown', ...known });
      const { fix, parts } = mainFuseOpen.remedy(f);
      expect(parts).toEqual([]);
      expect(fix.join(' ')).toMatch(/fuse stays out.*No fuse until/);
      expect([...fix, ...Object.values(splitOf(mainFuseOpen, f))].join(' ')).not.toMatch(/new fuse:|fuse in,/i);
    }
  });
  it('is mended where the new one holds: nothing to buy, the rating, and why the old one opened', () => {
    const { what, fix, parts, alreadyDone } = mainFuseOpen.remedy(answered({ 'spare-fuse': 'wakes' }));
    expect([alreadyDone, parts]).toEqual([true, []]);
    expect(what).toMatch(/new one holds.*comes on/);
    expect(fix[0]).toMatch(/^Read the section off the positive lead’s jacket/);
    expect(fix[1]).toMatch(/40 A, as before/);
    expect(fix.join(' ')).toMatch(/why the old one blew/);
    expect(fix.join(' ')).not.toMatch(/One new fuse/);
  });
  it('is told apart by a test that was not done yet', () => {
    const asked = (known: Known) => splitOf(mainFuseOpen, answered(known)).without;
    expect(asked({})).toMatch(/strip burnt through/);
    expect(asked({ 'fuse-look': 'blown' })).toMatch(/lamp in the fuse’s place/);
    expect(asked({ 'fuse-look': 'blown', 'fuse-lamp': 'dark' })).toMatch(/^One new fuse/);
    expect(asked({ 'spare-fuse': 'wakes' })).toMatch(/^Ten loud minutes/);
  });
});

describe('a positive lead on the frame', () => {
  it('is blamed alone only where the lamp was bright without the amplifier', () => {
    const background = (known: Known) => plusLeadChafed.remedy(answered(known)).background;
    expect(background({ 'lead-off-amp': 'bright' })).toMatch(/does not blow the fuse/);
    expect(background({ 'spare-fuse': 'opens' })).not.toMatch(/does not blow the fuse/);
  });
  it('is told apart by moving it where the lamp was bright without the amplifier', () => {
    expect(splitOf(plusLeadChafed, answered({ 'lead-off-amp': 'bright' })).without).toMatch(/flicker as you move/);
    expect(splitOf(plusLeadChafed, answered({})).without).toMatch(/does it stay bright/);
  });
});

describe('a bad fuse holder', () => {
  // Below 25 mV sound, above 75 mV bad at 5 A: common practice, no published source.
  it('shows what a holder loses with the lamp, and what was read across it', () => {
    expect(figuresFor(fuseHolderBad, KNOWN)).toEqual({
      'holder-drop-healthy': 'below 0.025 V',
      'holder-drop-bad': 'above 0.075 V',
      ...CUT_OUT,
      ...FUSE_TABLE,
    });
    const read = { 'plus-path': { ringV: 0.01, holderV: 0.412 } };
    expect(figuresFor(fuseHolderBad, KNOWN, read)).toMatchObject({ 'holder-drop-read': '0.412 V' });
  });
  it('is renewed with the fuse that was in it, once a lamp in its place is dark and the lead was read', () => {
    const holder = { do: 'renew-holder', onceLampIsDark: true } as const;
    expect(doneTo(fuseHolderBad, KNOWN)).toEqual([{ ...holder, fuseA: 40 }]);
    expect(doneTo(fuseHolderBad, TWO_AMPS)).toEqual([{ ...holder, fuseA: 60 }]);
    expect(doneTo(fuseHolderBad, UNKNOWN)).toEqual([holder]);
    const { readFirst, fix } = fuseHolderBad.remedy(found(KNOWN));
    expect(readFirst).toEqual(['plus-lead']);
    expect(fix.join(' ')).toMatch(
      /section off the positive lead’s jacket.*lamp in the fuse’s place.*fit the fuse: 40 A/,
    );
  });
});

/*
 * Full bass of 35.2 A wants a 40 A fuse, that wants 8 gauge (common practice), and the drop alone 4.5 mm²:
 * 1.16 (IEC 60228) × 17.241 nΩ m (IEC 60028) × 1.6 m × 35.2 A / 0.25 V.
 */
describe('a positive lead that is renewed', () => {
  it.each([plusLeadTooThin, plusLeadBroken])(
    '$id: 8.37 mm² with 40 A, for a known bike and an unknown one',
    (cause) => {
      for (const rig of [KNOWN, UNKNOWN]) {
        expect(figuresFor(cause, rig)).toMatchObject({
          'plus-lead-section': 'at least 8.37 mm²',
          'plus-lead-fuse': '40 A',
        });
        expect(doneTo(cause, rig)).toMatchObject([{ do: 'renew-lead', lead: 'plus', fuseA: 40 }]);
      }
    },
  );
  it('is 13.3 mm² with the 60 A that are there for two channels of 150 W', () => {
    expect(figuresFor(plusLeadTooThin, TWO_AMPS)).toMatchObject({
      'plus-lead-section': 'at least 13.3 mm²',
      'plus-lead-fuse': '60 A',
    });
  });
  it('is proved by the figure of the question that found it', () => {
    expect(plusLeadTooThin.remedy(found(KNOWN)).proofOfCure.byMeter).toMatch(
      /below 0\.069 V from the battery positive post/,
    );
  });
  it('shows what was read of the old one', () => {
    const read = { 'supply-under-load': { batteryV: 12.4, ampV: 11.6, plusDropV: 0.75, groundDropV: 0.05 } };
    // (11.6 / 12)^0.55 × 5 A = 4.91 A; 0.75 V / 4.91 A = 0.153 Ω; (12.4 − 10.5) V / 0.153 Ω = 12.4 A.
    expect(figuresFor(plusLeadTooThin, KNOWN, read)).toMatchObject({
      'plus-drop-read': '0.75 V',
      'plus-resistance': '0.15 Ω',
      'plus-cuts-out-from': '12 A',
    });
  });
  it('comes with a ground as thick where both are bad', () => {
    for (const rig of [KNOWN, UNKNOWN]) {
      const [plus, ground] = doneTo(bothLeadsBad, rig);
      expect(plus).toMatchObject({ do: 'renew-lead', lead: 'plus', fuseA: 40 });
      expect(ground).toMatchObject({ do: 'renew-lead', lead: 'ground' });
      expect('sectionM2' in (ground ?? {}) && ground).toMatchObject({ sectionM2: 8.37 * MM2 });
    }
  });
});

describe('a chafed positive lead', () => {
  it('is freed before the fuse goes in', () => {
    for (const rig of [KNOWN, UNKNOWN]) {
      expect(doneTo(plusLeadChafed, rig)).toMatchObject([
        { do: 'free-wire', wire: 'plus-lead' },
        { do: 'renew-fuse', fuse: 'main', onceLampIsDark: true },
      ]);
    }
    expect(figuresFor(plusLeadChafed, KNOWN)).toEqual(FUSE_TABLE);
    expect(figuresFor(plusLeadChafed, UNKNOWN)).toMatchObject({ 'main-fuse-on-13.3': 'at most 70 A' });
  });
});

describe('a joint that only wants work', () => {
  it.each([
    [batteryLugLoose, ['battery-plus', 'battery-minus', 'bike-ring']],
    [ampTerminalLoose, ['amp-terminal']],
    [ampGroundResistive, ['amp-ground']],
  ])('$id is tightened, and nothing is bought', (cause, places) => {
    for (const rig of [KNOWN, UNKNOWN]) {
      expect(doneTo(cause, rig)).toEqual(places.map((at) => ({ do: 'tighten-joint', at })));
      expect(cause.remedy(found(rig)).parts).toEqual([]);
      expect(figuresFor(cause, rig)).toMatchObject(CUT_OUT);
    }
  });
  // 5 A × (1.16 × 17.241 nΩ m × 0.9 m / 8.37 mm² + 2.5 mΩ) + 20 mV; the thinnest usual lead has 5.26 mm².
  it('is judged by what a sound ground loses with the lamp', () => {
    expect(figuresFor(ampGroundResistive, KNOWN)).toMatchObject({ 'ground-drop-healthy': 'below 0.043 V' });
    expect(figuresFor(ampGroundResistive, UNKNOWN)).toMatchObject({ 'ground-drop-healthy': 'below 0.05 V' });
  });
});

describe('a ground', () => {
  it('that is open gets a lead as thick as the positive lead, straight to the battery', () => {
    for (const rig of [KNOWN, UNKNOWN]) {
      expect(doneTo(ampGroundOpen, rig)).toMatchObject([{ do: 'renew-lead', lead: 'ground', sectionM2: 8.37 * MM2 }]);
    }
    const read = { 'amp-terminals': { batteryV: 12.6, plusV: 12.6, groundV: 12.42 } };
    expect(figuresFor(ampGroundOpen, KNOWN, read)).toEqual({
      'ground-read': '12.4 V',
      'ground-drop-healthy': 'below 0.043 V',
    });
  });
  it('that shares a bad screw gets one of its own', () => {
    for (const rig of [KNOWN, UNKNOWN]) expect(doneTo(sharedGroundScrew, rig)).toEqual([{ do: 'own-ground' }]);
    expect(figuresFor(sharedGroundScrew, KNOWN)).toEqual({ 'ground-drop-healthy': 'below 0.043 V' });
    expect(sharedGroundScrew.remedy(found(TWO_AMPS)).parts.join()).toMatch(/13\.3 mm²/);
  });
});
