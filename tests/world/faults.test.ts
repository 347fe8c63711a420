import { describe, expect, it } from 'vitest';
import type { Rig } from '../../src/rig/rig.ts';
import { FAULTS, keyOf, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { COMPLAINTS, type ComplaintId, ridden } from '../../src/world/symptoms/index.ts';
import { TWENTY_RIGS } from '../observe/rigs.ts';
import { CONVERTER_RIGS, LITHIUM_RIGS } from './bikes.ts';

/** What goes wrong with the sound on touring motorcycles, by place. Common practice of the trade, no published source. */
const CATALOGUE: Readonly<Record<string, readonly string[]>> = {
  power: ['main-fuse-open', 'fuse-holder-resistive', 'plus-lead-too-thin', 'battery-lug-loose', 'unit-feed-missing'],
  ground: ['amp-ground-resistive', 'amp-ground-open', 'ground-loop-two-points'],
  'turn-on': [
    'remote-wire-open',
    'remote-source-dead',
    'remote-volts-low',
    'remote-on-permanent',
    'sense-starved-by-profile',
    'sense-no-half-supply',
    'turn-on-mode-wrong',
    'sense-sleeps-in-quiet',
  ],
  source: [
    'paused-or-muted',
    'routed-to-headset',
    'fader-or-balance-off',
    'loudness-or-speed-volume',
    'call-mode-audio',
    'charge-lead-loop',
  ],
  phone: [
    'phone-tone-changed',
    'mirroring-needs-headset',
    'cable-charge-only',
    'usb-port-worn',
    'phone-permission-refused',
    'phone-software-mismatch',
    'mirroring-not-offered',
  ],
  'head unit': ['unit-hung', 'unit-channel-dead', 'unit-output-driven-too-far', 'unit-dead', 'replaced-unit-setting'],
  interconnect: [
    'replaced-unit-adapter-gap',
    'rear-plug-off',
    'lid-lead-broken',
    'lid-contacts-dirty',
    'amp-input-plug-off',
    'signal-lead-open',
    'bridge-output-grounded',
    'signal-lead-beside-power',
  ],
  profile: [
    'rear-channels-disabled',
    'amplified-profile-no-amp',
    'unaltered-profile-with-amp',
    'eq-changes-by-design',
    'amplified-profile-eq-changes',
    'profile-reverted',
  ],
  'amp input': ['range-too-sensitive', 'amp-input-too-low'],
  'amp settings': ['gain-too-high', 'highpass-off-with-boost', 'highpass-too-high', 'channel-mode-wrong'],
  amp: ['amp-channel-dead', 'amp-dead', 'amp-output-dc', 'amp-heat-protect', 'amp-load-too-low'],
  'speaker wiring': [
    'speaker-wire-open',
    'speaker-wire-to-frame',
    'speaker-pair-shorted',
    'polarity-one-of-pair',
    'polarity-front-rear',
  ],
  speaker: [
    'coil-open',
    'coil-rubbing-or-cone-torn',
    'speaker-underrated',
    'speaker-mount-loose',
    'tweeter-unprotected',
  ],
  charging: [
    'battery-worn',
    'battery-undercharged',
    'regulator-out-of-range',
    'regulator-ripple',
    'stator-phase-lost',
    'load-above-idle-output',
    'draw-from-other-device',
  ],
  'install practice': ['wire-chafed', 'ignition-noise', 'lamp-or-charger-noise', 'bass-masked-by-noise'],
};
const IDS = Object.values(CATALOGUE).flat();

/** What solved cases add to it: a joint or a contact for the most part, in a place that nobody suspects. */
const FROM_CASES: readonly string[] = [
  'amp-body-fuse-open',
  'amp-channel-rough',
  'unit-outputs-dead',
  'rear-control-off',
  'fuse-holder-open',
  'plus-lead-broken',
  'breaker-trips-hot',
  'ground-lead-too-thin',
  'plus-lead-clad',
  'both-leads-bad',
  'amp-terminal-loose',
  'shared-ground-screw',
  'battery-cuts-off',
  'input-pin-pushed-back',
  'converter-dead',
  'input-dc',
  'water-inside',
  'unit-fuse-open',
  'unit-plug-dirty',
  'rear-pairs-crossed',
  'second-connector-dirty',
  'looms-unjoined',
  'front-plug-off',
  'front-contacts-dirty',
  'trim-rattles',
  'mute-line-grounded',
];
const RIGS: readonly Rig[] = [...Object.values({ ...TWENTY_RIGS, ...CONVERTER_RIGS, ...LITHIUM_RIGS })];

describe('the faults', () => {
  it('are the 80 that the trade knows, and those that solved cases add', () => {
    expect(IDS).toHaveLength(80);
    const known = new Set(FAULTS.map(({ id }) => id));
    expect([...known].toSorted()).toEqual([...IDS, ...FROM_CASES].toSorted());
  });
  it('have a key of their own each', () => {
    const keys = FAULTS.map(keyOf);
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
  });
  it('have a severity between two positive ends where they are spread over decades', () => {
    for (const fault of FAULTS) {
      const { severity } = fault;
      if (!severity) continue;
      expect(severity.low, keyOf(fault)).toBeLessThan(severity.high);
      if (severity.spread === 'decades') expect(severity.low, keyOf(fault)).toBeGreaterThan(0);
      expect(severityAt(fault, 0)).toBeCloseTo(severity.low, 12);
      expect(severityAt(fault, 1)).toBeCloseTo(severity.high, 9);
    }
  });
  it('change the bike and leave the healthy one as it was', () => {
    for (const rig of Object.values(TWENTY_RIGS)) {
      const healthy = healthyWorld(rig);
      const before = JSON.stringify(healthy);
      for (const fault of FAULTS) if (fault.fits(healthy)) fault.apply(healthy, severityAt(fault, 0.5));
      expect(JSON.stringify(healthy)).toBe(before);
    }
  });

  it('leave a rear that plays as ever out of the complaint when only the front is too loud', () => {
    const tooLoud = FAULTS.find(({ id }) => id === 'gain-too-high') ?? expect.fail('no such fault');
    for (const rig of Object.values(TWENTY_RIGS)) {
      const healthy = healthyWorld(rig);
      const front = healthy.rig.amps.findIndex(({ drives }) => drives === 'front');
      if (front < 0 || healthy.rig.rearFitted === 'no') continue;
      const bike = ridden(tooLoud.apply({ ...healthy, about: front }, severityAt(tooLoud, 1)));
      expect(COMPLAINTS['no-rear-sound'](bike)).toBe('no');
    }
  });

  const weighted = FAULTS.filter(({ side }) => side !== 'right').flatMap((fault) =>
    (Object.keys(fault.weights) as ComplaintId[]).map((flow) => [keyOf(fault), flow, fault] as const),
  );
  it.each(weighted)('%s leads to the complaint %s on some bike', (_, flow, fault) => {
    const complains = RIGS.some((rig) => {
      const healthy = healthyWorld(rig);
      return (
        fault.fits(healthy) &&
        [0.5, 0.99, 0.01].some(
          (share) => COMPLAINTS[flow](ridden(fault.apply(healthy, severityAt(fault, share)))) === 'yes',
        )
      );
    });
    expect(complains).toBe(true);
  });
});
