import type { History } from '../state.ts';
import type { Fault } from './kit.ts';

/**
 * What riders tell of the past, by fault: how often, over a bike of which nothing is known. A fault that fits the last
 * work is three times as likely to have begun with it. All of it estimates of the trade, for ranking only.
 */

const BEFORE: History['before'] = { never: 1, stopped: 3, 'comes-and-goes': 0.5 };
const CHANGE: History['lastChange'] = {
  nothing: 3,
  fitted: 1,
  workshop: 1,
  reflash: 0.5,
  unit: 0.3,
  opened: 1.5,
  front: 0.7,
  battery: 1,
  lead: 0.4,
  rain: 0.7,
  stood: 0.5,
};

interface Told {
  readonly before?: Partial<History['before']>;
  readonly lastChange?: Partial<History['lastChange']>;
}

const STEADY = { 'comes-and-goes': 0 };
const LOOSE = { never: 0.2, 'comes-and-goes': 6 };
const FROM_THE_FITTING: Told = { before: { never: 4, 'comes-and-goes': 0.2 }, lastChange: { fitted: 6 } };
const OPENED: Told = { lastChange: { opened: 3, workshop: 2, fitted: 2 } };

const TOLD: Readonly<Record<string, Told>> = {
  'fader-or-balance-off': { before: { never: 0.1, ...STEADY }, lastChange: { battery: 3 } },
  'rear-control-off': { before: { never: 0.3 } },
  'rear-channels-disabled': { before: { never: 30, stopped: 0.1, ...STEADY }, lastChange: { fitted: 6 } },
  'profile-reverted': { before: { never: 0, ...STEADY }, lastChange: { workshop: 6, reflash: 3, unit: 3 } },
  'replaced-unit-setting': { before: { never: 2, ...STEADY }, lastChange: { unit: 12 } },
  'replaced-unit-adapter-gap': { before: { never: 4, stopped: 1, ...STEADY }, lastChange: { unit: 12, rain: 0.1 } },
  'sense-starved-by-profile': { lastChange: { reflash: 15, nothing: 0.5 } },
  'turn-on-mode-wrong': FROM_THE_FITTING,
  'sense-no-half-supply': FROM_THE_FITTING,
  'channel-mode-wrong': FROM_THE_FITTING,
  'amp-input-too-low': { before: { never: 2 }, lastChange: { fitted: 3, reflash: 3 } },
  'amp-input-plug-off': { before: { never: 0.5 }, lastChange: { fitted: 3, workshop: 2, battery: 1.5, front: 3 } },
  'amp-channel-dead': { before: { never: 0.3, 'comes-and-goes': 0.5 } },
  'amp-body-fuse-open': { before: { never: 0.5, ...STEADY }, lastChange: { fitted: 2, battery: 2 } },
  'amp-dead': { before: { never: 0.3 } },
  'main-fuse-open': { before: { never: 0.5, ...STEADY }, lastChange: { lead: 2, fitted: 3, battery: 2 } },
  'amp-ground-open': { lastChange: { lead: 2, fitted: 3, battery: 3 } },
  'amp-ground-resistive': { lastChange: { lead: 2, rain: 2, fitted: 3 } },
  'fuse-holder-resistive': { before: LOOSE },
  'battery-lug-loose': { before: LOOSE, lastChange: { lead: 2, battery: 6, workshop: 2 } },
  'fuse-holder-open': { before: { never: 0.5, 'comes-and-goes': 2 }, lastChange: { stood: 3 } },
  'polarity-one-of-pair': {
    before: { never: 3, 'comes-and-goes': 0.1 },
    lastChange: { fitted: 3, front: 4, unit: 2, opened: 2 },
  },
  'polarity-front-rear': { before: { never: 3, 'comes-and-goes': 0.1 }, lastChange: { fitted: 4, unit: 3, lead: 2 } },
  'breaker-trips-hot': { before: { never: 0.5, 'comes-and-goes': 8 }, lastChange: { lead: 3, fitted: 3 } },
  'ground-lead-too-thin': { before: { never: 2 }, lastChange: { lead: 4, fitted: 4 } },
  'plus-lead-clad': { before: { never: 0.5 }, lastChange: { lead: 4, fitted: 3 } },
  'plus-lead-broken': { before: LOOSE, lastChange: { lead: 2, fitted: 2, battery: 2 } },
  'both-leads-bad': { before: LOOSE },
  'amp-terminal-loose': { before: LOOSE, lastChange: { lead: 4, fitted: 4 } },
  'shared-ground-screw': { before: LOOSE, lastChange: { lead: 2, fitted: 2, workshop: 2, battery: 2 } },
  'battery-undercharged': { before: { never: 0.2, 'comes-and-goes': 2 }, lastChange: { stood: 6 } },
  'battery-worn': { before: { never: 0.2, 'comes-and-goes': 2 }, lastChange: { stood: 1.5 } },
  'battery-cuts-off': { before: { never: 0.2, 'comes-and-goes': 3 }, lastChange: { stood: 4, battery: 4 } },
  'input-pin-pushed-back': {
    before: { never: 2, 'comes-and-goes': 2 },
    lastChange: { lead: 3, fitted: 4, workshop: 2, front: 2 },
  },
  'signal-lead-open': {
    before: { never: 2, 'comes-and-goes': 2 },
    lastChange: { fitted: 4, unit: 3, workshop: 2, front: 2, opened: 1.5 },
  },
  'converter-dead': { before: { never: 0.5 }, lastChange: { fitted: 2 } },
  'input-dc': { before: { never: 0.3 }, lastChange: { unit: 2 } },
  'water-inside': { before: { never: 0.1, 'comes-and-goes': 2 }, lastChange: { rain: 6, stood: 2, opened: 4 } },
  'unit-hung': { lastChange: { battery: 4, workshop: 2 } },
  'unit-dead': { before: { never: 0.2 }, lastChange: { rain: 4, battery: 2 } },
  'unit-outputs-dead': { before: { never: 0.2 }, lastChange: { battery: 4, rain: 2, opened: 2, front: 2, fitted: 2 } },
  'bridge-output-grounded': { lastChange: { fitted: 5, unit: 4, lead: 2 } },
  'unit-fuse-open': { before: { never: 0.2, ...STEADY }, lastChange: { unit: 4, battery: 3 } },
  'rear-pairs-crossed': { before: { never: 8, 'comes-and-goes': 0.1 }, lastChange: { fitted: 6, unit: 4 } },
  'looms-unjoined': { before: { never: 30, stopped: 0.3, ...STEADY }, lastChange: { fitted: 6, workshop: 2 } },
  'unit-plug-dirty': { before: LOOSE, lastChange: { rain: 4, unit: 3, stood: 2, workshop: 2, front: 2 } },
  'second-connector-dirty': { before: LOOSE, lastChange: { rain: 4, stood: 4, opened: 2, workshop: 2 } },
  'remote-wire-open': { lastChange: { lead: 2, fitted: 3, front: 2 } },
  'remote-source-dead': { before: { never: 2 }, lastChange: { fitted: 6 } },
  'remote-volts-low': { lastChange: { fitted: 3 } },
  'front-plug-off': { before: { never: 0.5 }, lastChange: { front: 10, unit: 2, workshop: 2 } },
  'front-contacts-dirty': { before: LOOSE, lastChange: { rain: 4, stood: 4, front: 2 } },
  'rear-plug-off': { ...OPENED, before: { never: 0.3 } },
  'lid-contacts-dirty': { before: LOOSE, lastChange: { rain: 4, stood: 4, opened: 2 } },
  'lid-lead-broken': { before: LOOSE },
  'speaker-wire-open': { lastChange: { lead: 2, fitted: 3 } },
  'speaker-wire-to-frame': { before: { never: 0.5 }, lastChange: { ...OPENED.lastChange, front: 3 } },
  'speaker-pair-shorted': { before: { never: 0.5 }, lastChange: { fitted: 2, front: 2 } },
  'coil-open': { before: { never: 0.3, 'comes-and-goes': 0.5 } },
  'unaltered-profile-with-amp': { before: { never: 6, ...STEADY }, lastChange: { fitted: 5, unit: 3, workshop: 1.5 } },
  'amplified-profile-eq-changes': { before: { never: 1.5, ...STEADY }, lastChange: { reflash: 12 } },
  'eq-changes-by-design': { before: { never: 10, stopped: 0.5 }, lastChange: { nothing: 2 } },
  'bass-masked-by-noise': { before: { never: 4, 'comes-and-goes': 2 }, lastChange: { front: 2 } },
  'loudness-or-speed-volume': { before: { never: 0.5, 'comes-and-goes': 0.3 }, lastChange: { battery: 2 } },
  'phone-tone-changed': { before: { never: 0.3, 'comes-and-goes': 2 } },
  'unit-output-driven-too-far': { before: { never: 2, 'comes-and-goes': 2 } },
  'range-too-sensitive': FROM_THE_FITTING,
  'gain-too-high': { before: { never: 2, ...STEADY }, lastChange: { fitted: 4, reflash: 3 } },
  'highpass-off-with-boost': FROM_THE_FITTING,
  'speaker-underrated': FROM_THE_FITTING,
  'amp-channel-rough': { before: { never: 0.3 } },
  'coil-rubbing-or-cone-torn': { before: { never: 0.3 }, lastChange: { rain: 2, front: 2, opened: 1.5 } },
  'speaker-mount-loose': {
    before: { never: 0.6, 'comes-and-goes': 2 },
    lastChange: { fitted: 3, front: 2, opened: 2 },
  },
  'mute-line-grounded': {
    before: { never: 1.5, 'comes-and-goes': 2 },
    lastChange: { unit: 6, front: 4, fitted: 2, lead: 2 },
  },
  'trim-rattles': {
    before: { never: 0.4, 'comes-and-goes': 3 },
    lastChange: { front: 5, opened: 2, workshop: 2, fitted: 2 },
  },
  'ground-loop-two-points': { before: { never: 2 }, lastChange: { fitted: 5, lead: 2 } },
  'signal-lead-beside-power': { before: { never: 2 }, lastChange: { fitted: 5, lead: 3 } },
  'charge-lead-loop': { before: { never: 2, 'comes-and-goes': 2 } },
};

const times = <K extends string>(odds: Readonly<Record<K, number>>, by: Partial<Record<K, number>> = {}) =>
  Object.fromEntries(
    (Object.entries(odds) as [K, number][]).map(([name, share]) => [name, share * (by[name] ?? 1)]),
  ) as Record<K, number>;

/** The past that goes with a fault. */
export const historyOf = ({ id }: Pick<Fault, 'id'>): History => ({
  before: times(BEFORE, TOLD[id]?.before),
  lastChange: times(CHANGE, TOLD[id]?.lastChange),
});
