import { describe, expect, it } from 'vitest';
import type { Cause } from '../../../src/causes/cause.ts';
import { splitOf } from '../../../src/causes/cause.ts';
import { adapterWithoutRemote } from '../../../src/causes/turn-on/adapter-without-remote.ts';
import { remoteOnPermanent } from '../../../src/causes/turn-on/remote-on-permanent.ts';
import { remoteSourceDead } from '../../../src/causes/turn-on/remote-source-dead.ts';
import { remoteVoltsLow } from '../../../src/causes/turn-on/remote-volts-low.ts';
import { remoteWireOpen } from '../../../src/causes/turn-on/remote-wire-open.ts';
import { turnOnModeWrong } from '../../../src/causes/turn-on/turn-on-mode-wrong.ts';
import { unitFeedMissing } from '../../../src/causes/turn-on/unit-feed-missing.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { remoteVolts } from '../../../src/steps/turn-on/remote-volts.ts';
import { answered, figuresFor, found, KNOWN, TWO_AMPS, UNKNOWN } from '../found.ts';

const doneTo = (cause: Cause, rig: Rig) => cause.remedy(found(rig)).repair;

describe('the remote wire', () => {
  // Within a volt of 12.6 V, and amplifiers switch on above 7 to 9 V: from memory of the trade, no published source.
  const REMOTE = {
    'remote-healthy': 'above 11.6 V',
    'remote-switches-on': '7 to 9 V',
    'remote-fuse': '1 A',
  };
  it.each([remoteWireOpen, remoteSourceDead, remoteVoltsLow, remoteOnPermanent, adapterWithoutRemote])(
    '$id: what it should carry, on a known bike and an unknown one',
    (cause) => {
      expect(figuresFor(cause, KNOWN)).toEqual(REMOTE);
      expect(figuresFor(cause, UNKNOWN)).toEqual(REMOTE);
      expect(figuresFor(cause, KNOWN, { 'remote-volts': { remoteV: 5.43 } })).toMatchObject({
        'remote-read': '5.43 V',
      });
    },
  );
  it('is healthy where the question calls it so, by the battery that was read', () => {
    const facts = { 'amp-terminals': { readings: { batteryV: '12.1 V', plusV: '12.1', groundV: '0' } } };
    const f = found(KNOWN, {}, facts);
    const healthy = remoteWireOpen.remedy(f).numbers.find(({ id }) => id === 'remote-healthy')?.value;
    expect(remoteVolts.bands('remoteV', {}, f)?.find(({ mood }) => mood === 'good')?.low).toBe(healthy);
    expect(remoteWireOpen.remedy(f).proofOfCure.byMeter).toMatch(/above 11\.1 V/);
  });
  it.each([
    [remoteWireOpen, [{ do: 'renew-wire', wire: 'remote' }]],
    [remoteSourceDead, [{ do: 'move-remote', to: 'switched-feed' }]],
    [remoteVoltsLow, [{ do: 'move-remote', to: 'switched-feed' }]],
    [remoteOnPermanent, [{ do: 'move-remote', to: 'switched-feed' }, { do: 'charge-battery' }]],
    [adapterWithoutRemote, [{ do: 'complete-adapter', carries: 'remote' }]],
  ])('$id is mended at the wire, and no amplifier is bought', (cause, actions) => {
    for (const rig of [KNOWN, UNKNOWN]) expect(doneTo(cause, rig)).toEqual(actions);
  });
  // Half of 28 Ah over 0.9 A is 15.6 h, half of 20 Ah 11.1 h. 0.9 A and the half: from memory, no published source.
  it('that never goes off takes half the battery in a night', () => {
    expect(remoteOnPermanent.remedy(found(KNOWN)).background).toMatch(/half of 28 Ah is gone in about 16 hours/);
    expect(remoteOnPermanent.remedy(found({ batteryAh: 20 })).background).toMatch(
      /half of 20 Ah is gone in about 11 hours/,
    );
  });
  it('is bad along its way where it reads well at its start and weak at its end, and no feed is blamed then', () => {
    const read = answered({ 'remote-volts': 'low', 'remote-source': 'live' });
    expect(remoteWireOpen.remedy(read).what).toMatch(/good at its start and weak at .*barely conducts/);
    expect(remoteVoltsLow.remedy(read).what).not.toMatch(/feed/);
    expect(remoteVoltsLow.remedy(answered({ 'remote-volts': 'low' })).what).toMatch(/feed/);
    expect(remoteWireOpen.remedy(answered({ 'remote-volts': 'none' })).what).toMatch(/broken/);
  });
  it('is not told apart by looking for volts at its start once they were looked for', () => {
    const before = splitOf(remoteSourceDead, answered({ 'remote-volts': 'none' }));
    expect(splitOf(remoteSourceDead, answered({ 'remote-source': 'dead' })).byMeter).not.toBe(before.byMeter);
    expect(splitOf(remoteSourceDead, answered({ 'remote-start-lamp': 'dark' })).without).not.toBe(before.without);
  });
  it('is not told apart by reading both its ends once they were read', () => {
    const atBothEnds = splitOf(remoteWireOpen, answered({ 'remote-volts': 'low', 'remote-source': 'live' }));
    expect(atBothEnds).not.toEqual(splitOf(remoteWireOpen, answered({ 'remote-volts': 'low' })));
    expect(atBothEnds.byMeter).toMatch(/past the tap/);
  });
});

describe('a turn-on selector that is wrong', () => {
  it('goes to what is wired', () => {
    const to = (rig: Rig) => doneTo(turnOnModeWrong, rig);
    expect(to(KNOWN)).toEqual([{ do: 'set-selector', selector: 'turn-on', to: 'wire' }]);
    expect(to(TWO_AMPS)).toEqual([{ do: 'set-selector', selector: 'turn-on', to: 'signal' }]);
    expect(to({ amps: [{ drives: 'both', turnOn: 'dc' }] })).toEqual([
      { do: 'set-selector', selector: 'turn-on', to: 'dc' },
    ]);
  });
  it('looks at what is wired before it is set, whatever was said, and is told with a wire and without one', () => {
    for (const rig of [UNKNOWN, KNOWN, TWO_AMPS, { amps: [{ drives: 'both', turnOn: 'dc' }] } as Rig]) {
      const { fix, readFirst } = turnOnModeWrong.remedy(found(rig));
      expect(readFirst).toContain('turn-on');
      const looks = fix.findIndex((line) => line.startsWith('See what is wired'));
      const sets = fix.findIndex((line) => /wire, remote or 12 V/.test(line) && /signal|auto|DC/.test(line));
      expect(looks).toBeGreaterThanOrEqual(0);
      expect(sets).toBeGreaterThan(looks);
      expect(fix[sets]).toMatch(/None\? Then|One is there\? Then/);
    }
  });
  // 0.05 to 1 V, and 3 to 5 V of DC: from memory of the trade, by their own papers; no published source.
  it('shows what such amplifiers wake at', () => {
    expect(figuresFor(turnOnModeWrong, TWO_AMPS)).toEqual({ 'wakes-above': '0.050 to 1.0 V' });
    expect(figuresFor(turnOnModeWrong, { amps: [{ drives: 'both', turnOn: 'dc' }] })).toEqual({
      'wakes-above-dc': '3 to 5 V',
    });
    expect(figuresFor(turnOnModeWrong, KNOWN)).toMatchObject({ 'remote-healthy': 'above 11.6 V' });
  });
});

describe('a head unit without one of its feeds', () => {
  it('gets its fuse, its pin and its plug, and both feeds near the battery prove it', () => {
    for (const rig of [KNOWN, UNKNOWN]) {
      expect(doneTo(unitFeedMissing, rig)).toEqual([
        { do: 'renew-fuse', fuse: 'unit' },
        { do: 'renew-pin', plug: 'unit' },
        { do: 'seat-plug', plug: 'unit' },
      ]);
      // Common practice, no published source.
      expect(figuresFor(unitFeedMissing, rig)).toEqual({ 'unit-feed-near': 'at most 0.5 V' });
    }
  });
});
