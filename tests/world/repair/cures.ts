import type { RepairAction, Where } from '../../../src/causes/repair-action.ts';
import { gainTargetV } from '../../../src/compute/gain.ts';
import { FAULTS } from '../../../src/world/faults/index.ts';
import type { World } from '../../../src/world/state.ts';
import { isAmplified } from '../../../src/world/valued-rig.ts';

/*
 * What mends each fault: the fix that the trade names for it. Common practice, no published source. It is written down
 * here apart from the causes of the site, so that neither can be bent to suit the other.
 */

export type Cure = (world: World) => readonly RepairAction[];

const actions =
  (...list: readonly RepairAction[]): Cure =>
  () =>
    list;
const made = ({ rig, about }: World) => rig.amps[about ?? -1];
const fuseA = (world: World) => made(world)?.mainFuseA ?? 0;

const renewPlus: Cure = (world) => [
  { do: 'renew-lead', lead: 'plus', sectionM2: made(world)?.plusLeadM2 ?? 0, fuseA: fuseA(world) },
];
const renewHolder: Cure = (world) => [{ do: 'renew-holder', fuseA: fuseA(world) }];
const setGain =
  (axle: 'rear' | 'both'): Cure =>
  (world) => {
    const { powerW = 1, ratedOhm: loadOhm = 1 } = made(world) ?? {};
    return [{ do: 'set-gain', axle, outputV: gainTargetV({ powerW, loadOhm }) }];
  };
const newRear: Cure = ({ rig }) => [{ do: 'replace-speaker', where: 'rear', ratedOhm: rig.rearRatedOhm }];
const newFrontLeft: Cure = ({ rig }) => [{ do: 'replace-speaker', where: 'front-left', ratedOhm: rig.frontRatedOhm }];

/** The profile that suits what is fitted, by its four properties. */
const selectFitting: Cure = ({ rig }) => {
  const unaltered = !isAmplified(rig) || rig.amps.some(({ needs }) => needs === 'unaltered');
  return [
    {
      do: 'select-profile',
      rear: 'on',
      ...(unaltered
        ? ({ level: 'full', boost: 'as-delivered' } as const)
        : ({ level: 'lowered', boost: 'none', eq: 'same' } as const)),
    },
  ];
};

const LEFT: Readonly<Record<string, Cure>> = {
  'main-fuse-open': actions({ do: 'renew-fuse', fuse: 'main' }),
  'fuse-holder-open': renewHolder,
  'breaker-trips-hot': renewHolder,
  'fuse-holder-resistive': renewHolder,
  'fuse-holder-resistive@severe': renewHolder,
  'plus-lead-too-thin': renewPlus,
  'plus-lead-clad': renewPlus,
  'ground-lead-too-thin': (world) => [{ do: 'renew-lead', lead: 'ground', sectionM2: made(world)?.plusLeadM2 ?? 0 }],
  'plus-lead-broken': renewPlus,
  'plus-lead-broken@intermittent': renewPlus,
  'both-leads-bad': (world) => [...renewPlus(world), { do: 'tighten-joint', at: 'amp-ground' }],
  'amp-terminal-loose@severe': actions({ do: 'tighten-joint', at: 'amp-terminal' }),
  'amp-terminal-loose@bumps': actions({ do: 'seat-plug', plug: 'amp-power' }),
  'shared-ground-screw': actions({ do: 'tighten-joint', at: 'amp-ground' }),
  'shared-ground-screw@severe': actions({ do: 'own-ground' }),
  'battery-lug-loose@amp-ring': actions({ do: 'tighten-joint', at: 'battery-plus' }),
  'battery-lug-loose@amp-minus-ring': actions({ do: 'tighten-joint', at: 'battery-minus' }),
  'battery-lug-loose@amp-ring-on-bumps': actions({ do: 'tighten-joint', at: 'battery-plus' }),
  'battery-lug-loose@battery-post': actions({ do: 'tighten-joint', at: 'bike-ring' }),
  'unit-feed-missing': actions({ do: 'renew-pin', plug: 'unit' }),
  'unit-feed-missing@intermittent': actions({ do: 'renew-pin', plug: 'unit' }),
  'amp-ground-resistive': actions({ do: 'tighten-joint', at: 'amp-ground' }),
  'amp-ground-resistive@severe': actions({ do: 'own-ground' }),
  'amp-ground-open': actions({ do: 'own-ground' }),
  'wire-chafed@plus-lead': actions({ do: 'free-wire', wire: 'plus-lead' }, { do: 'renew-fuse', fuse: 'main' }),

  'remote-wire-open': actions({ do: 'renew-wire', wire: 'remote' }),
  'remote-wire-open@intermittent': actions({ do: 'renew-wire', wire: 'remote' }),
  'remote-wire-open@bad-joint': actions({ do: 'renew-wire', wire: 'remote' }),
  'remote-source-dead': actions({ do: 'move-remote', to: 'switched-feed' }),
  'remote-volts-low': actions({ do: 'fit-remote-relay' }),
  'remote-on-permanent': actions({ do: 'move-remote', to: 'switched-feed' }),
  'remote-on-permanent@emptied': actions({ do: 'move-remote', to: 'switched-feed' }, { do: 'charge-battery' }),
  'sense-starved-by-profile': actions({ do: 'select-profile', level: 'full', boost: 'as-delivered' }),
  'sense-no-half-supply': actions({ do: 'wake-by-wire' }),
  'turn-on-mode-wrong@sense-but-wire-used': actions({ do: 'set-selector', selector: 'turn-on', to: 'wire' }),
  'turn-on-mode-wrong@wire-but-none-fitted': (world) => [
    { do: 'set-selector', selector: 'turn-on', to: made(world)?.turnOn ?? 'wire' },
  ],
  'sense-sleeps-in-quiet': actions({ do: 'wake-by-wire' }),
  'channel-mode-wrong': actions({ do: 'set-selector', selector: 'input-mode', to: 'as-wired' }),

  'fader-or-balance-off@fader': actions({ do: 'centre-fader' }),
  'fader-or-balance-off@balance': actions({ do: 'centre-fader' }),
  'fader-or-balance-off@weak': actions({ do: 'centre-fader' }),
  'fader-or-balance-off@balance-weak': actions({ do: 'centre-fader' }),
  'rear-control-off@weak': actions({ do: 'turn-up-rear-control' }),
  'rear-control-off': actions({ do: 'turn-up-rear-control' }),

  'paused-or-muted': actions({ do: 'play-here' }),
  'paused-or-muted@phone': actions({ do: 'play-here' }),
  'routed-to-headset': actions({ do: 'play-here' }),
  'loudness-or-speed-volume@bass-up': actions({ do: 'flatten-tone', of: 'unit' }),
  'loudness-or-speed-volume@bass-down': actions({ do: 'flatten-tone', of: 'unit' }),
  'loudness-or-speed-volume@speed': actions({ do: 'flatten-tone', of: 'unit' }),
  'unit-output-driven-too-far': actions({ do: 'turn-down' }),
  'replaced-unit-setting@bass-off': actions({ do: 'set-unit-menu', bass: 'flat' }),
  'replaced-unit-setting@engine': actions({ do: 'set-unit-menu', compensation: 'off' }),
  'replaced-unit-setting@mirroring-off': actions({ do: 'set-unit-menu', mirroring: 'on' }),

  'call-mode-audio': actions({ do: 'end-voice-mode' }),
  'phone-tone-changed@bass-up': actions({ do: 'flatten-tone', of: 'phone' }),
  'phone-tone-changed@bass-down': actions({ do: 'flatten-tone', of: 'phone' }),
  'mirroring-needs-headset': actions({ do: 'allow-without-headset' }),
  'cable-charge-only': actions({ do: 'renew-phone-link', part: 'cable' }),
  'usb-port-worn': actions({ do: 'renew-phone-link', part: 'port' }),
  'phone-permission-refused': actions({ do: 'pair-anew' }),
  'phone-software-mismatch': actions({ do: 'update-phone' }),

  'charge-lead-loop': actions({ do: 'part-from-noise', of: 'phone-lead' }),
  'ground-loop-two-points@converter': actions({ do: 'part-from-noise', of: 'converter' }),
  'signal-lead-beside-power': actions({ do: 'part-from-noise', of: 'signal-lead' }),
  'ignition-noise': actions({ do: 'part-from-noise', of: 'sparks' }),
  'lamp-or-charger-noise': actions({ do: 'part-from-noise', of: 'other-device' }),

  'highpass-off-with-boost': actions({ do: 'set-filter', highpassHz: 80, bassBoostDb: 0 }),
  'highpass-too-high': actions({ do: 'set-filter', highpassHz: 80, bassBoostDb: 0 }),
  'polarity-one-of-pair': actions({ do: 'turn-polarity', where: 'front-left' }),
  'polarity-one-of-pair@rear': actions({ do: 'turn-polarity', where: 'rear-left' }),
  'polarity-front-rear': actions({ do: 'turn-polarity', where: 'rear' }),
  'speaker-mount-loose': actions({ do: 'seal-mount', where: 'all' }),
  'speaker-mount-loose@front': actions({ do: 'seal-mount', where: 'front-left' }),
  'speaker-mount-loose@rear': actions({ do: 'seal-mount', where: 'rear-left' }),
  'mute-line-grounded': actions({ do: 'isolate-mute-line' }),
  'trim-rattles@front': actions({ do: 'fasten-trim' }),
  'trim-rattles@rear': actions({ do: 'fasten-trim' }),
  'tweeter-unprotected': actions({ do: 'fit-tweeter-filter', where: 'front' }),

  'unit-hung': actions({ do: 'repair-unit' }),
  'unit-hung@never-sleeps': actions({ do: 'repair-unit' }),
  'unit-channel-dead': actions({ do: 'repair-unit' }),
  'unit-channel-dead@one-rear': actions({ do: 'repair-unit' }),
  'rear-pairs-crossed@sides-changed': actions({ do: 'uncross-pairs' }),
  'rear-pairs-crossed@minuses-changed': actions({ do: 'uncross-pairs' }),
  'rear-pairs-crossed@like-with-like': actions({ do: 'uncross-pairs' }),
  'unit-fuse-open': actions({ do: 'renew-fuse', fuse: 'unit' }),
  'unit-dead': actions({ do: 'repair-unit' }),
  'unit-outputs-dead': actions({ do: 'repair-unit' }),
  'replaced-unit-setting@rear-off': actions({ do: 'set-unit-menu', rear: 'on' }),
  'replaced-unit-adapter-gap@rear-pairs': actions({ do: 'complete-adapter', carries: 'rear-pairs' }),
  'replaced-unit-adapter-gap@remote': actions({ do: 'complete-adapter', carries: 'remote' }),
  'replaced-unit-adapter-gap@one-pair': actions({ do: 'complete-adapter', carries: 'pair', where: 'front-left' }),
  'replaced-unit-adapter-gap@one-rear': actions({ do: 'complete-adapter', carries: 'pair', where: 'rear-left' }),
  'bridge-output-grounded': actions({ do: 'free-wire', wire: 'unit-output' }),
  'rear-channels-disabled': actions({ do: 'select-profile', rear: 'on' }),
  'amplified-profile-no-amp': actions({ do: 'select-profile', level: 'full', boost: 'as-delivered' }),
  'unaltered-profile-with-amp': actions({ do: 'select-profile', level: 'lowered', boost: 'none', eq: 'same' }),
  'amplified-profile-eq-changes': actions({ do: 'select-profile', eq: 'same' }),
  'profile-reverted': selectFitting,
  'profile-reverted@level': selectFitting,

  'amp-input-plug-off': actions({ do: 'seat-plug', plug: 'amp-input' }),
  'amp-input-plug-off@rear': actions({ do: 'seat-plug', plug: 'amp-input', where: 'rear' }),
  'amp-input-plug-off@loose': actions({ do: 'seat-plug', plug: 'amp-input' }),
  'amp-input-plug-off@one-rear': actions({ do: 'seat-plug', plug: 'amp-input', where: 'rear-left' }),
  'input-pin-pushed-back': actions({ do: 'renew-pin', plug: 'amp-input', where: 'rear' }),
  'input-pin-pushed-back@one-rear': actions({ do: 'renew-pin', plug: 'amp-input', where: 'rear-left' }),
  'amp-input-plug-off@one-front': actions({ do: 'seat-plug', plug: 'amp-input', where: 'front-left' }),
  'input-pin-pushed-back@one-front': actions({ do: 'renew-pin', plug: 'amp-input', where: 'front-left' }),
  'converter-dead': actions({ do: 'replace-converter' }),
  'input-dc': actions({ do: 'repair-unit' }),
  'signal-lead-open': actions({ do: 'renew-wire', wire: 'signal' }),
  'signal-lead-open@rear': actions({ do: 'renew-wire', wire: 'signal', where: 'rear' }),
  'signal-lead-open@one-wire': actions({ do: 'renew-wire', wire: 'signal' }),
  'ground-loop-two-points': actions({ do: 'own-ground' }),
  'range-too-sensitive': actions({ do: 'set-selector', selector: 'range', to: 'as-fed' }),
  'amp-input-too-low': setGain('rear'),
  'amp-input-too-low@weak': setGain('rear'),
  'amp-input-too-low@unit-at-its-limit': setGain('both'),
  'gain-too-high': setGain('both'),
  'gain-too-high@trips': setGain('both'),
  'amp-channel-dead@rear-pair': actions({ do: 'repair-amp' }),
  'amp-channel-dead@one': actions({ do: 'repair-amp' }),
  'amp-channel-dead@one-front': actions({ do: 'repair-amp' }),
  'amp-channel-rough': actions({ do: 'repair-amp' }),
  'amp-dead': actions({ do: 'repair-amp' }),
  'amp-dead@internal-short': actions({ do: 'repair-amp' }, { do: 'renew-fuse', fuse: 'main' }),
  'amp-body-fuse-open': actions({ do: 'renew-fuse', fuse: 'amp-body' }),
  'water-inside@fault': actions({ do: 'dry-amp' }),
  'water-inside@dark': actions({ do: 'dry-amp' }),
  'amp-output-dc': actions({ do: 'repair-amp' }),
  'amp-heat-protect': actions({ do: 'cool-amp' }),
  'amp-load-too-low': ({ rig, about }) => [
    { do: 'rewire-speakers', where: 'rear', togetherOhm: rig.amps[about ?? -1]?.ratedOhm ?? 4 },
  ],

  'rear-plug-off@both-rear': actions({ do: 'seat-plug', plug: 'rear-dock' }),
  'rear-plug-off@one-rear': actions({ do: 'seat-plug', plug: 'rear-dock', where: 'rear-left' }),
  'lid-lead-broken@both-rear': actions({ do: 'renew-wire', wire: 'lid-lead', where: 'rear' }),
  'lid-lead-broken@one-rear': actions({ do: 'renew-wire', wire: 'lid-lead', where: 'rear-left' }),
  'lid-lead-broken@both-rear-parted': actions({ do: 'renew-wire', wire: 'lid-lead', where: 'rear' }),
  'lid-lead-broken@one-rear-parted': actions({ do: 'renew-wire', wire: 'lid-lead', where: 'rear-left' }),
  'lid-lead-broken@intermittent': actions({ do: 'renew-wire', wire: 'lid-lead', where: 'rear-left' }),
  'lid-contacts-dirty@both-rear': actions({ do: 'clean-contacts', plug: 'rear-dock' }),
  'lid-contacts-dirty@one-rear': actions({ do: 'clean-contacts', plug: 'rear-dock', where: 'rear-left' }),
  'lid-contacts-dirty@both-rear-green': actions({ do: 'clean-contacts', plug: 'rear-dock' }),
  'lid-contacts-dirty@one-rear-green': actions({ do: 'clean-contacts', plug: 'rear-dock', where: 'rear-left' }),
  'lid-contacts-dirty@intermittent': actions({ do: 'clean-contacts', plug: 'rear-dock', where: 'rear-left' }),
  'lid-contacts-dirty@weak': actions({ do: 'clean-contacts', plug: 'rear-dock' }),
  'lid-contacts-dirty@one-weak': actions({ do: 'clean-contacts', plug: 'rear-dock', where: 'rear-left' }),
  'front-plug-off@one-front': actions({ do: 'seat-plug', plug: 'front-speaker', where: 'front-left' }),
  'front-contacts-dirty@one-front': actions({ do: 'clean-contacts', plug: 'front-speaker', where: 'front-left' }),
  'front-contacts-dirty@weak': actions({ do: 'clean-contacts', plug: 'front-speaker', where: 'front-left' }),
  'unit-plug-dirty@one-front': actions({ do: 'clean-contacts', plug: 'unit', where: 'front-left' }),
  'unit-plug-dirty@one-rear': actions({ do: 'clean-contacts', plug: 'unit', where: 'rear-left' }),
  'unit-plug-dirty': actions({ do: 'clean-contacts', plug: 'unit' }),
  'unit-plug-dirty@wet': actions({ do: 'clean-contacts', plug: 'unit' }),
  'second-connector-dirty@both-rear': actions({ do: 'clean-contacts', plug: 'second' }),
  'second-connector-dirty@one-rear': actions({ do: 'clean-contacts', plug: 'second', where: 'rear-left' }),
  'second-connector-dirty@open': actions({ do: 'clean-contacts', plug: 'second' }),
  'second-connector-dirty@weak': actions({ do: 'clean-contacts', plug: 'second' }),
  'second-connector-dirty@one-weak': actions({ do: 'clean-contacts', plug: 'second', where: 'rear-left' }),
  'looms-unjoined': actions({ do: 'join-looms' }),
  'looms-unjoined@one-rear': actions({ do: 'join-looms', where: 'rear-left' }),
  'speaker-wire-open@splice-green': actions({ do: 'renew-wire', wire: 'speaker-run', where: 'rear' }),
  'speaker-wire-open@both-rear': actions({ do: 'renew-wire', wire: 'speaker-run', where: 'rear' }),
  'speaker-wire-open@one-rear': actions({ do: 'renew-wire', wire: 'speaker-run', where: 'rear-left' }),
  'speaker-wire-open@under-the-seat': actions({ do: 'renew-wire', wire: 'speaker-run', where: 'rear-left' }),
  'speaker-wire-open@one-front': actions({ do: 'renew-wire', wire: 'speaker-run', where: 'front-left' }),
  'speaker-wire-open@at-the-steering': actions({ do: 'renew-wire', wire: 'speaker-run', where: 'front-left' }),
  'speaker-wire-to-frame@one-rear-alone': actions({ do: 'free-wire', wire: 'speaker-run', where: 'rear-left' }),
  'speaker-wire-to-frame@one-front-alone': actions({ do: 'free-wire', wire: 'speaker-run', where: 'front-left' }),
  'speaker-pair-shorted@one-rear-alone': actions({ do: 'renew-wire', wire: 'speaker-run', where: 'rear-left' }),
  'speaker-pair-shorted@one-front-alone': actions({ do: 'renew-wire', wire: 'speaker-run', where: 'front-left' }),
  'speaker-wire-to-frame@both-rear': actions({ do: 'free-wire', wire: 'speaker-run', where: 'rear' }),
  'speaker-wire-to-frame@one-rear': actions({ do: 'free-wire', wire: 'speaker-run', where: 'rear-left' }),
  'speaker-wire-to-frame@lid-moves': actions({ do: 'free-wire', wire: 'speaker-run', where: 'rear-left' }),
  'speaker-wire-to-frame@lid-shut': actions({ do: 'free-wire', wire: 'speaker-run', where: 'rear-left' }),
  'speaker-pair-shorted@both-rear': actions({ do: 'free-wire', wire: 'speaker-run', where: 'rear' }),
  'speaker-pair-shorted@one-rear': actions({ do: 'free-wire', wire: 'speaker-run', where: 'rear-left' }),
  'wire-chafed@speaker-run': actions({ do: 'renew-wire', wire: 'speaker-run', where: 'rear-left' }),
  'coil-open@both-rear': newRear,
  'coil-open@one-rear': newRear,
  'coil-open@one': newFrontLeft,
  'coil-open@broken-braid': newFrontLeft,
  'coil-rubbing-or-cone-torn': newFrontLeft,
  'coil-rubbing-or-cone-torn@far': newFrontLeft,
  'coil-rubbing-or-cone-torn@rear': newRear,
  'coil-rubbing-or-cone-torn@rear-far': newRear,
  'speaker-underrated': ({ rig }) => [
    { do: 'replace-speaker', where: 'front', ratedOhm: rig.frontRatedOhm },
    { do: 'replace-speaker', where: 'rear', ratedOhm: rig.rearRatedOhm },
  ],

  'battery-worn': actions({ do: 'replace-battery' }),
  'battery-cuts-off': actions({ do: 'replace-battery' }),
  'battery-cuts-off@empty': actions({ do: 'charge-battery' }),
  'battery-undercharged': actions({ do: 'charge-battery' }),
  'battery-undercharged@stood': actions({ do: 'charge-battery' }),
  'regulator-out-of-range@low': actions({ do: 'repair-charging' }, { do: 'charge-battery' }),
  'regulator-out-of-range@high': actions({ do: 'repair-charging' }),
  'regulator-ripple': actions({ do: 'repair-charging' }),
  'stator-phase-lost': actions({ do: 'repair-charging' }),
  'load-above-idle-output': actions({ do: 'take-off-load' }, { do: 'charge-battery' }),
  'draw-from-other-device': actions({ do: 'take-off-load' }),
};

/** The same on the right of the bike. */
const onTheRight =
  (cure: Cure): Cure =>
  (world) =>
    cure(world).map((action) =>
      'where' in action && action.where ? { ...action, where: otherSide(action.where) } : action,
    );
const otherSide = (where: Where): Where =>
  where.endsWith('-left') ? (where.replace('left', 'right') as Where) : where;

/** What is wrong on one side may be wrong on the other: it is written down of the left, as the faults are. */
const ON_EITHER_SIDE = new Set(
  FAULTS.filter(({ side }) => side === 'right').map(({ id, variant = '' }) =>
    [id, variant.replace(/-?right$/, '')].filter(Boolean).join('@'),
  ),
);
export const CURES: Readonly<Record<string, Cure>> = Object.fromEntries(
  Object.entries(LEFT).flatMap(([key, cure]) =>
    ON_EITHER_SIDE.has(key)
      ? [[key, cure] as const, [key.includes('@') ? `${key}-right` : `${key}@right`, onTheRight(cure)] as const]
      : [[key, cure] as const],
  ),
);
