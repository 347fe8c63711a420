import { describe, expect, it } from 'vitest';
import { senseNoHalfSupply } from '../../../src/causes/amp-input/sense-no-half-supply.ts';
import { senseStarved } from '../../../src/causes/amp-input/sense-starved.ts';
import { sleepsInQuiet } from '../../../src/causes/amp-input/sleeps-in-quiet.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { figuresOf, ON_AMP, onBike } from '../on-bike.ts';

const LISTENS: Rig = { ...ON_AMP, amps: [{ ...ON_AMP.amps[0], turnOn: 'signal', needs: 'unaltered' }] };

// One watt into 4 Ω is 2 V (Joule's law); 7 dB less is 0.89 V (10^(−7 / 20)). Thresholds by papers; from memory.
describe('an amplifier that hears too little', () => {
  it('gets 2 V for a watt at full level, and 0.89 V of it from an amplified profile', () => {
    expect(figuresOf(senseStarved, onBike(LISTENS))).toMatchObject({
      'wakes-by-sound': '0.050 to 1.0 V',
      'one-watt-full': '2 V',
      'one-watt-lowered': '0.89 V',
    });
  });
  it('shows what it hears and what its papers say, where both were read', () => {
    const read = { 'sense-level': { usualV: 0.31, loudV: 1.1, papersV: 0.6 } };
    expect(figuresOf(senseStarved, onBike(LISTENS, {}, read))).toMatchObject({
      hears: '0.31 V',
      'wakes-by-sound': '0.6 V',
    });
  });
  it('gets the full level and its boost back, gain down before and set after', () => {
    const { repair, fix, notBuy } = senseStarved.remedy(onBike(LISTENS));
    expect(repair).toMatchObject([
      { do: 'select-profile', level: 'full', boost: 'as-delivered' },
      { do: 'set-gain', axle: 'both' },
    ]);
    expect(fix[1]).toMatch(/gain to minimum/);
    // A visit is what it takes: only one that lowers the level again is none.
    expect(notBuy.join()).toMatch(/profile for amplifiers/);
    expect(notBuy.join()).not.toMatch(/reflash/);
  });
});

describe('an amplifier that is woken by a wire instead', () => {
  it.each([senseNoHalfSupply, sleepsInQuiet])('$id: a fused wire, and gain down before it wakes', (cause) => {
    const { repair, fix, parts } = cause.remedy(onBike(LISTENS));
    expect(repair).toEqual([{ do: 'wake-by-wire' }]);
    expect(fix.join(' ')).toMatch(/battery negative off, amplifier gain down.* 1 A fuse/);
    expect(parts.join()).toMatch(/1 A fuse/);
  });
  it('waited for 3 to 5 V of DC, where a live pair has 5.0 to 6.9 V', () => {
    expect(figuresOf(senseNoHalfSupply, onBike(LISTENS, {}, { 'sense-dc': { plusV: 0, minusV: 0.05 } }))).toEqual({
      'one-wire-dc': '0 V',
      'other-wire-dc': '0.05 V',
      'half-supply-healthy': '5.0 to 6.9 V',
      'wakes-by-dc': '3 to 5 V',
    });
  });
});
