import { CORNERS } from '../../rig/corner.ts';
import { OPEN, shapeOf } from '../healthy.ts';
import type { Contact, World } from '../state.ts';
import { driverOf, isFitted } from '../valued-rig.ts';
import {
  always,
  both,
  decades,
  even,
  type Fault,
  hasAmp,
  hasRear,
  isFactory,
  isReplaced,
  noAmp,
  REAR,
  REAR_LEFT,
  turnsOnBy,
  withAmp,
  withPhone,
  withSettings,
  withUnit,
  withUnitPlug,
  withUnitToGround,
} from './kit.ts';

/** A stored profile that switches the rear off does so once. */
const rearOn = ({ unit }: World): boolean => unit.rearOn;

/** An adapter that has no wire for a pair, and one that has the wires and lacks the pins. */
const NO_WIRE: Contact = { ...OPEN, wants: 'wire' };
const NO_PIN: Contact = { ...OPEN, wants: 'pin' };
const NO_WIRES = { plus: NO_WIRE, minus: NO_WIRE } as const;

/** Whether the rear is fed from the rear pairs of the unit, directly or through an amplifier. */
const fromRearPairs = (world: World): boolean => {
  const driver = driverOf(world.rig, 'rear-left');
  return hasRear(world) && (driver === 'unit' || world.amps[driver]?.inputs['rear-left'] === 'rear-left');
};

/** Whether every speaker that is fitted hangs on an amplifier. */
const allOnAmps = ({ rig }: World): boolean =>
  CORNERS.every((corner) => !isFitted(rig, corner) || driverOf(rig, corner) !== 'unit');

/** Faults of the head unit, of its wires, and of the profile that is stored in it. */
export const UNIT_FAULTS: readonly Fault[] = [
  {
    id: 'unit-hung',
    title: 'Head unit hung',
    severity: null,
    weights: { 'no-sound-at-all': 5, 'mirroring-wont-start': 5 },
    fits: always,
    apply: (world) => withUnit(world, { hung: true }),
  },
  {
    id: 'unit-hung',
    variant: 'never-sleeps',
    title: 'Head unit that never goes to sleep',
    severity: null,
    weights: { 'battery-flat-or-low': 3 },
    fits: always,
    apply: (world) => withUnit(world, { neverSleeps: true }),
  },
  {
    id: 'unit-channel-dead',
    title: 'One output of the head unit dead',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 2 },
    fits: always,
    apply: (world) => withUnit(world, { deadChannels: ['front-left'] }),
  },
  {
    id: 'unit-channel-dead',
    variant: 'one-rear',
    title: 'One rear output of the head unit dead',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 1 },
    fits: hasRear,
    apply: (world) => withUnit(world, { deadChannels: REAR_LEFT }),
  },
  {
    id: 'rear-pairs-crossed',
    variant: 'sides-changed',
    title: 'Left and right rear pairs changed over',
    severity: null,
    // Everything plays. Only balance, and every test that goes by sides, is turned round.
    weights: {},
    fits: fromRearPairs,
    apply: (world) => withUnit(world, { rearPairs: 'sides-changed' }),
  },
  {
    id: 'rear-pairs-crossed',
    variant: 'minuses-changed',
    title: 'Rear pairs with each other’s negative wire',
    severity: null,
    // What is the same on both sides plays as ever. One side alone comes out of both, at half the volts.
    weights: {},
    fits: fromRearPairs,
    apply: (world) => withUnit(world, { rearPairs: 'minuses-changed' }),
  },
  {
    id: 'rear-pairs-crossed',
    variant: 'like-with-like',
    title: 'Rear pairs joined positive with positive, negative with negative',
    severity: null,
    weights: { 'no-rear-sound': 1 },
    fits: fromRearPairs,
    apply: (world) => withUnit(world, { rearPairs: 'like-with-like' }),
  },
  {
    id: 'unit-fuse-open',
    title: 'Fuse on the head unit open',
    severity: null,
    weights: { 'no-sound-at-all': 4 },
    fits: always,
    apply: (world) => withUnit(world, { fuseOpen: true }),
  },
  {
    id: 'unit-output-driven-too-far',
    title: 'Head unit turned up past its clean step',
    severity: even('timesTooLoudRatio', 1.6, 4),
    weights: { 'distortion-at-volume': 8, 'speakers-blow-again': 6 },
    fits: always,
    apply: (world, times) => withSettings(world, ({ topVolumeRatio }) => ({ topVolumeRatio: times * topVolumeRatio })),
  },
  {
    id: 'unit-dead',
    title: 'Head unit dead',
    severity: null,
    weights: { 'no-sound-at-all': 2 },
    fits: always,
    apply: (world) => withUnit(world, { alive: false }),
  },
  {
    id: 'unit-outputs-dead',
    title: 'All outputs of the head unit dead',
    severity: null,
    weights: { 'no-sound-at-all': 1 },
    // An amplifier that listens stays asleep with it, and that is another complaint.
    fits: ({ rig }) => rig.amps.every(({ turnOn }) => turnOn === 'wire'),
    apply: (world) => withUnit(world, { deadChannels: CORNERS }),
  },
  {
    id: 'replaced-unit-setting',
    variant: 'rear-off',
    title: 'Rear outputs off in the replaced head unit',
    severity: null,
    weights: { 'no-rear-sound': 4 },
    fits: both(isReplaced, hasRear),
    apply: (world) => withUnit(world, { rearOn: false }),
  },
  {
    id: 'replaced-unit-setting',
    variant: 'bass-off',
    title: 'High-pass on in the replaced head unit',
    severity: even('bassDb', -15, -8),
    weights: { 'thin-no-bass': 4 },
    fits: isReplaced,
    apply: (world, bassDb) => withSettings(world, { bassDb }),
  },
  {
    id: 'replaced-unit-setting',
    variant: 'engine',
    title: 'Engine or speed compensation on in the replaced head unit',
    severity: even('gainDb', 3, 6),
    weights: { 'eq-changes-when-engine-starts': 3 },
    fits: isReplaced,
    apply: (world, gainDb) =>
      withUnit(world, ({ profile }) => ({
        profile: { ...profile, engineDifference: { gainDb, centreHz: 80, q: 1 } },
      })),
  },
  {
    id: 'replaced-unit-setting',
    variant: 'mirroring-off',
    title: 'Mirroring off in the replaced head unit',
    severity: null,
    weights: { 'mirroring-wont-start': 3 },
    fits: isReplaced,
    apply: (world) => withPhone(world, { offersMirroring: false }),
  },
  {
    id: 'replaced-unit-adapter-gap',
    variant: 'rear-pairs',
    title: 'Adapter of the replaced head unit without rear pairs',
    severity: null,
    weights: { 'no-rear-sound': 4 },
    fits: both(isReplaced, hasRear),
    apply: (world) => withUnitPlug(world, REAR, NO_WIRES),
  },
  {
    id: 'replaced-unit-adapter-gap',
    variant: 'remote',
    title: 'Adapter of the replaced head unit without the remote wire',
    severity: null,
    weights: { 'amp-wont-turn-on': 3, 'no-sound-at-all': 3 },
    fits: both(isReplaced, turnsOnBy('wire')),
    apply: (world) => withAmp(world, { remotePin: NO_WIRE }),
  },
  {
    id: 'replaced-unit-adapter-gap',
    variant: 'one-pair',
    title: 'Adapter of the replaced head unit without one pair',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 3 },
    fits: isReplaced,
    apply: (world) => withUnitPlug(world, ['front-left'], { plus: NO_PIN, minus: NO_PIN }),
  },
  {
    id: 'replaced-unit-adapter-gap',
    variant: 'one-rear',
    title: 'Adapter of the replaced head unit without one rear pair',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 2 },
    fits: both(isReplaced, hasRear),
    apply: (world) => withUnitPlug(world, ['rear-left'], NO_WIRES),
  },
  {
    id: 'bridge-output-grounded',
    title: 'A wire of a bridge output joined to ground',
    severity: decades('groundOhm', 0.05, 8),
    weights: { 'no-sound-at-all': 3, 'whine-or-ticking': 3 },
    fits: always,
    apply: (world, ohm) => withUnitToGround(world, ['front-left'], { ohm }),
  },
  {
    id: 'unit-plug-dirty',
    title: 'Rear pairs lost in the head unit’s own plug',
    severity: decades('pinOhm', 2_000, 1e6),
    weights: { 'no-rear-sound': 3 },
    fits: hasRear,
    apply: (world, ohm) => {
      const filmed = { ohm, movedOhm: 0.5, wants: 'cleaning' } as const;
      return withUnitPlug(world, REAR, { plus: filmed, minus: filmed });
    },
  },
  {
    id: 'unit-plug-dirty',
    variant: 'wet',
    title: 'Water in the head unit’s plug, between the rear pairs and ground',
    severity: decades('wetOhm', 0.2, 5),
    weights: { 'no-rear-sound': 0.5 },
    fits: hasRear,
    apply: (world, ohm) => withUnitToGround(world, REAR, { ohm, wants: 'cleaning' }),
  },
  ...(['front-left', 'rear-left'] as const).map(
    (corner): Fault => ({
      id: 'unit-plug-dirty',
      variant: corner === 'front-left' ? 'one-front' : 'one-rear',
      title: 'One pair lost in the head unit’s own plug',
      severity: decades('pinOhm', 2_000, 1e6),
      weights: { 'one-speaker-or-side-dead': 1.5 },
      fits: corner === 'front-left' ? always : hasRear,
      apply: (world, ohm) => {
        const filmed = { ohm, movedOhm: 0.5, wants: 'cleaning' } as const;
        return withUnitPlug(world, [corner], { plus: filmed, minus: filmed });
      },
    }),
  ),
  {
    id: 'rear-channels-disabled',
    title: 'Rear channels switched off in the stored profile',
    severity: null,
    weights: { 'no-rear-sound': 9, 'amp-wont-turn-on': 4 },
    fits: both(isFactory, hasRear, rearOn),
    apply: (world) => withUnit(world, { rearOn: false }),
  },
  {
    id: 'amplified-profile-no-amp',
    title: 'Profile for an amplifier, and none there',
    severity: null,
    weights: { 'thin-no-bass': 6 },
    fits: both(isFactory, noAmp),
    apply: (world) => withUnit(world, { profile: shapeOf(world.rig, 'amplified-same') }),
  },
  {
    id: 'unaltered-profile-with-amp',
    title: 'Unaltered profile in front of an amplifier',
    severity: null,
    weights: { 'distortion-at-volume': 9, 'eq-changes-when-engine-starts': 7, 'speakers-blow-again': 8 },
    // Where a pair hangs on the head unit, the full level is right.
    fits: both(isFactory, allOnAmps),
    apply: (world) => withUnit(world, { profile: shapeOf(world.rig, 'unaltered') }),
  },
  {
    id: 'eq-changes-by-design',
    title: 'A profile that is right for the build, and changes with the engine',
    severity: null,
    weights: { 'eq-changes-when-engine-starts': 8 },
    byDesign: true,
    fits: both(isFactory, ({ unit }) => unit.profile.engineDifference !== null),
    // Nothing is broken: the healthy bike of this build does it.
    apply: (world) => world,
  },
  {
    id: 'amplified-profile-eq-changes',
    title: 'Profile for an amplifier that changes with the engine',
    severity: null,
    weights: { 'eq-changes-when-engine-starts': 5, 'distortion-at-volume': 1 },
    fits: both(isFactory, hasAmp),
    apply: (world) => withUnit(world, { profile: shapeOf(world.rig, 'amplified-changes') }),
  },
  {
    id: 'profile-reverted',
    title: 'Head unit back on an unaltered profile',
    severity: null,
    weights: { 'no-rear-sound': 3 },
    fits: both(isFactory, (world) => hasRear(world) && rearOn(world) && world.rig.deliveredWith === 'two'),
    apply: (world) => withUnit(world, { profile: shapeOf(world.rig, 'unaltered'), rearOn: false }),
  },
  {
    id: 'profile-reverted',
    variant: 'level',
    title: 'Head unit back on an unaltered profile, in front of an amplifier',
    severity: null,
    // Where the rear goes silent with it, that is what is complained of.
    weights: { 'distortion-at-volume': 3, 'eq-changes-when-engine-starts': 3 },
    fits: both(isFactory, allOnAmps, (world) => !hasRear(world) || world.rig.deliveredWith === 'four'),
    apply: (world) => withUnit(world, { profile: shapeOf(world.rig, 'unaltered') }),
  },
];
