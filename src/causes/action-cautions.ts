import type { CautionId } from '../steps/cautions.ts';
import { cautionsOfCondition, cautionsOfProbes } from '../steps/cautions-of.ts';
import { onThisBike } from '../steps/concerns.ts';
import { type Findings, is } from '../steps/outcome.ts';
import { isUnfused } from '../steps/supply/unfused.ts';
import { type Cause, type CheckNeeds, type Remedy, splitOf } from './cause.ts';
import type { MainFuse, RepairAction } from './repair-action.ts';

type Cautions = readonly CautionId[];

/** All leads come off the battery negative post, and go on again. */
const AT_THE_BATTERY: Cautions = ['minus-first', 'battery-gas', 'cranking'];
/** The positive lead or its holder is opened, and with it a fuse is fitted. */
const ON_THE_PLUS_LEAD: Cautions = [...AT_THE_BATTERY, 'fuse', 'capacitors', 'hot'];
/** The ground of the amplifier comes off: what is left of it are the shields of its signal leads. Its main fuse goes in last. */
const ON_THE_GROUND: Cautions = [...AT_THE_BATTERY, 'ground-open', 'temporary-lead', 'capacitors', 'hot'];
const ON_A_SPEAKER_WIRE: Cautions = ['key-off', 'bridge'];
const ON_THE_REMOTE_WIRE: Cautions = ['key-off', 'data', 'fuse'];
const ON_A_CONTROL: Cautions = ['riding'];

/** What somebody has to be careful of who does an action. */
const OF_ACTIONS: {
  readonly [K in RepairAction['do']]: (action: Extract<RepairAction, { readonly do: K }>) => Cautions;
} = {
  'centre-fader': () => ON_A_CONTROL,
  'turn-up-rear-control': () => ON_A_CONTROL,
  'set-unit-menu': () => ON_A_CONTROL,
  'restart-unit': () => ['key-off', 'comes-back-loud'],
  'play-here': () => [...ON_A_CONTROL, 'comes-back-loud'],
  'flatten-tone': () => ON_A_CONTROL,
  'tune-for-riding': () => [...ON_A_CONTROL, 'outdoors', 'hot'],
  'turn-down': () => ON_A_CONTROL,
  'set-filter': () => ['key-off'],
  'select-profile': ({ level }) => [
    'warranty',
    ...(level === 'full' ? (['back-to-full'] as const) : level === 'lowered' ? (['set-gain-again'] as const) : []),
  ],
  'set-selector': () => ['key-off', 'wakes-loud'],
  'set-gain': () => ['key-off', 'amp-output', 'loud-tone', 'bridge'],
  'seat-plug': ({ plug }) => onThePlug(plug),
  // Water in the head unit’s plug is a short of its outputs until it is out.
  'clean-contacts': ({ plug }) => (plug === 'unit' ? [...onThePlug(plug), 'into-a-short', 'hot'] : onThePlug(plug)),
  'renew-pin': ({ plug }) => onThePlug(plug),
  'complete-adapter': ({ carries }) => (carries === 'remote' ? ON_THE_REMOTE_WIRE : [...ON_A_SPEAKER_WIRE, 'data']),
  'renew-wire': ({ wire }) => (wire === 'remote' ? ON_THE_REMOTE_WIRE : ON_A_SPEAKER_WIRE),
  'free-wire': ({ wire }) =>
    wire === 'plus-lead' ? [...AT_THE_BATTERY, 'hot'] : [...ON_A_SPEAKER_WIRE, 'into-a-short', 'hot'],
  'join-looms': () => [...ON_A_SPEAKER_WIRE, 'data'],
  'uncross-pairs': () => ON_A_SPEAKER_WIRE,
  'turn-polarity': () => ON_A_SPEAKER_WIRE,
  'part-from-noise': ({ of }) => (of === 'sparks' ? ['key-off', 'hot', 'outdoors'] : ['key-off']),
  'pair-anew': () => ON_A_CONTROL,
  'end-voice-mode': () => ON_A_CONTROL,
  'update-phone': () => ON_A_CONTROL,
  'renew-phone-link': () => ['key-off'],
  'allow-without-headset': () => ['warranty'],
  'renew-lead': (action) => (action.lead === 'plus' ? [...ON_THE_PLUS_LEAD, ...withLamp(action)] : ON_THE_GROUND),
  'renew-holder': (action) => [...ON_THE_PLUS_LEAD, ...withLamp(action)],
  'renew-fuse': (action) =>
    action.fuse === 'main'
      ? ['key-off', 'fuse', 'capacitors', 'hot', ...withLamp(action)]
      : ['key-off', 'fuse', action.fuse === 'unit' ? 'data' : 'hot'],
  'tighten-joint': ({ at }) => {
    if (at === 'amp-ground') return ON_THE_GROUND;
    return at === 'amp-terminal' ? [...AT_THE_BATTERY, 'capacitors', 'hot'] : AT_THE_BATTERY;
  },
  'own-ground': () => ON_THE_GROUND,
  'move-remote': () => ON_THE_REMOTE_WIRE,
  'fit-remote-relay': () => ON_THE_REMOTE_WIRE,
  'wake-by-wire': () => [...AT_THE_BATTERY, ...ON_THE_REMOTE_WIRE, 'wakes-loud'],
  'charge-battery': () => ['battery-gas', 'own-charger'],
  'replace-battery': () => [...AT_THE_BATTERY, 'own-charger'],
  'repair-charging': () => ['outdoors', 'hot', 'key-off', 'battery-gas'],
  'take-off-load': () => ['key-off'],
  'replace-speaker': () => [...ON_A_SPEAKER_WIRE, 'cone'],
  'rewire-speakers': () => [...ON_A_SPEAKER_WIRE, 'cone'],
  'seal-mount': () => [...ON_A_SPEAKER_WIRE, 'cone'],
  'isolate-mute-line': () => ON_A_SPEAKER_WIRE,
  'fasten-trim': () => ['key-off', 'bridge', 'warranty'],
  'fit-tweeter-filter': () => [...ON_A_SPEAKER_WIRE, 'cone'],
  'replace-converter': () => ON_A_SPEAKER_WIRE,
  'cool-amp': () => ['hot', 'key-off'],
  'dry-amp': () => [...AT_THE_BATTERY, 'capacitors', 'warranty'],
  'repair-amp': () => [...AT_THE_BATTERY, 'capacitors', 'warranty'],
  'repair-unit': () => ['key-off', 'data', 'warranty', 'comes-back-loud'],
};

/** A lamp shows first that nothing behind the fuse is shorted. */
function withLamp({ onceLampIsDark }: MainFuse): Cautions {
  return onceLampIsDark ? ['lamp-hot'] : [];
}

/** A plug of power is live with the key off; one of the head unit has other wires in it. */
function onThePlug(plug: Extract<RepairAction, { readonly do: 'seat-plug' }>['plug']): Cautions {
  if (plug === 'amp-power') return [...AT_THE_BATTERY, 'capacitors', 'hot'];
  return plug === 'unit' ? [...ON_A_SPEAKER_WIRE, 'data'] : ON_A_SPEAKER_WIRE;
}

/** What somebody has to be careful of who does this. */
export const cautionsOfAction = <D extends RepairAction['do']>(
  action: Extract<RepairAction, { readonly do: D }>,
): Cautions => OF_ACTIONS[action.do as D](action);

/** A lead that was found without a fuse is told first, whatever the cause is; it comes off at the battery. */
const ofUnfused = (f: Findings): Cautions => (isUnfused(f.facts) ? ['no-fuse', 'minus-first', 'battery-gas'] : []);

/** What to be careful of with the fix: what follows from its actions, and what the cause adds. */
export const cautionsOfFix = ({ repair, cautions = [] }: Pick<Remedy, 'repair' | 'cautions'>, f: Findings): Cautions =>
  onThisBike([...ofUnfused(f), ...repair.flatMap(cautionsOfAction), ...cautions], f.rig);

const hasMeter = (f: Findings): boolean => is(f, 'tools-at-hand', 'meter');
const ofNeeds = ({ needs = [], touches = [] }: CheckNeeds): Cautions => [
  ...needs.flatMap(cautionsOfCondition),
  ...cautionsOfProbes(touches),
];

/** What to be careful of with the check that separates a cause, as it is done with the tools at hand. */
export function cautionsOfCheck(cause: Cause, f: Findings): Cautions {
  const split = splitOf(cause, f);
  const asByMeter = hasMeter(f) || split.byMeter === split.without;
  return onThisBike([...ofUnfused(f), ...(asByMeter ? ofNeeds(split) : (split.cautions ?? []))], f.rig);
}

/** And with the check after the fix, besides what the fix says already. */
export function cautionsOfProof(remedy: Remedy, f: Findings): Cautions {
  const said = cautionsOfFix(remedy, f);
  return hasMeter(f) ? onThisBike(ofNeeds(remedy.proofOfCure), f.rig).filter((id) => !said.includes(id)) : [];
}
