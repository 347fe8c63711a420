import { type Corner, perCorner } from '../../rig/corner.ts';
import { OPEN, SOUND } from '../healthy.ts';
import type { Amp, Contact, PairOf, World } from '../state.ts';
import {
  decades,
  driven,
  even,
  type Fault,
  hasAmp,
  hasRear,
  noAmp,
  REAR,
  REAR_LEFT,
  theAmp,
  withAmp,
  withNoise,
  withSettings,
  withSpeakers,
  withUnit,
} from './kit.ts';

/** A plug that is not home touches while a finger presses it. */
const NOT_HOME: Contact = { ...OPEN, movedOhm: SOUND.ohm };
const PAIR_NOT_HOME: PairOf<Contact> = { plus: NOT_HOME, minus: NOT_HOME };
/** A pin that has slipped back in its housing: no finger on the plug reaches it. */
const PUSHED_BACK: Contact = { ...OPEN, wants: 'pin' };
const PAIR_PUSHED_BACK: PairOf<Contact> = { plus: PUSHED_BACK, minus: PUSHED_BACK };
/** Somewhere between its plugs the wire ends: a joint that was never made, or copper that broke. */
const BROKEN: Contact = { ...OPEN, wants: 'wire' };
const PAIR_BROKEN: PairOf<Contact> = { plus: BROKEN, minus: BROKEN };
/** The plugs of some inputs, as they are now. */
const atInputs =
  (corners: readonly Corner[], pair: PairOf<Contact>) =>
  (world: World): World =>
    withAmp(world, ({ inputPlug }) => ({
      inputPlug: { ...inputPlug, ...Object.fromEntries(corners.map((corner) => [corner, pair])) },
    }));

const times =
  (ratio: number) =>
  ({ front, rear }: { front: number; rear: number }) => ({
    front: ratio * front,
    rear: ratio * rear,
  });
const onRear = driven('rear', 'amp');
const FRONT_LEFT: readonly Corner[] = ['front-left'];
/** Whether the amplifier that is meant drives the front, alone or beside the rear. */
const drivesFront = (world: World): boolean =>
  ['front', 'both'].includes(world.rig.amps[theAmp(world) ?? -1]?.drives ?? '');
const ampOf = (world: World): Amp | undefined => world.amps[theAmp(world) ?? -1];
const ratedOhmOf = (world: World) => world.rig.amps[theAmp(world) ?? 0]?.ratedOhm ?? 4;

/** Faults of an amplifier, of what goes into it, and of how it is set. */
export const AMP_FAULTS: readonly Fault[] = [
  {
    id: 'amp-input-plug-off',
    title: 'Signal plug at the amplifier not home',
    severity: null,
    weights: { 'no-rear-sound': 5, 'amp-wont-turn-on': 4, 'no-sound-at-all': 5 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { inputPlug: perCorner(() => PAIR_NOT_HOME) }),
  },
  {
    id: 'amp-input-plug-off',
    variant: 'rear',
    title: 'Rear signal plug at the amplifier not home',
    severity: null,
    weights: { 'no-rear-sound': 5 },
    fits: onRear,
    apply: atInputs(REAR, PAIR_NOT_HOME),
  },
  {
    id: 'amp-input-plug-off',
    variant: 'one-rear',
    title: 'Signal plug of one rear side not home',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 3 },
    fits: onRear,
    apply: atInputs(REAR_LEFT, PAIR_NOT_HOME),
  },
  {
    id: 'amp-input-plug-off',
    variant: 'one-front',
    title: 'Signal plug of one front side not home',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 2 },
    fits: drivesFront,
    apply: atInputs(FRONT_LEFT, PAIR_NOT_HOME),
  },
  {
    id: 'amp-input-plug-off',
    variant: 'loose',
    title: 'Signal plug at the amplifier that opens on bumps',
    severity: null,
    weights: { 'cuts-out': 4 },
    fits: hasAmp,
    apply: (world) =>
      withAmp(world, ({ inputPlug }) => ({
        inputPlug: perCorner((corner) => ({
          plus: { ...inputPlug[corner].plus, movedOhm: Infinity },
          minus: { ...inputPlug[corner].minus, movedOhm: Infinity },
        })),
      })),
  },
  {
    id: 'input-pin-pushed-back',
    title: 'Pins of the rear pairs pushed back in the signal plug',
    severity: null,
    weights: { 'no-rear-sound': 2 },
    fits: onRear,
    apply: atInputs(REAR, PAIR_PUSHED_BACK),
  },
  {
    id: 'input-pin-pushed-back',
    variant: 'one-rear',
    title: 'Pins of one rear pair pushed back in the signal plug',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 2 },
    fits: onRear,
    apply: atInputs(REAR_LEFT, PAIR_PUSHED_BACK),
  },
  {
    id: 'input-pin-pushed-back',
    variant: 'one-front',
    title: 'Pins of one front pair pushed back in the signal plug',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 1 },
    fits: drivesFront,
    apply: atInputs(FRONT_LEFT, PAIR_PUSHED_BACK),
  },
  {
    id: 'converter-dead',
    title: 'Converter between speaker wires and line-level input dead',
    severity: null,
    weights: { 'no-rear-sound': 2, 'amp-wont-turn-on': 1, 'no-sound-at-all': 1 },
    fits: (world) => ampOf(world)?.converter === 'works',
    apply: (world) => withAmp(world, { converter: 'dead' }),
  },
  {
    id: 'input-dc',
    title: 'DC on an input of the amplifier',
    severity: even('inputDcV', 1.5, 5),
    weights: { 'amp-wont-turn-on': 2 },
    // It comes from the head unit's own output, and only speaker wires bring it.
    fits: (world) => ampOf(world)?.passesDc === true,
    apply: (world, inputDcV) => {
      const { inputs } = ampOf(world) ?? {};
      const pair = inputs?.['rear-left'] ?? inputs?.['front-left'] ?? 'front-left';
      return withUnit(world, ({ outputDcV }) => ({ outputDcV: { ...outputDcV, [pair]: inputDcV } }));
    },
  },
  {
    id: 'signal-lead-open',
    title: 'The signal lead open between the head unit and the amplifier',
    severity: null,
    weights: { 'no-rear-sound': 1, 'amp-wont-turn-on': 1, 'no-sound-at-all': 2 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { inputPlug: perCorner(() => PAIR_BROKEN) }),
  },
  {
    id: 'signal-lead-open',
    variant: 'rear',
    title: 'The rear pairs of the signal lead open between the head unit and the amplifier',
    severity: null,
    weights: { 'no-rear-sound': 1 },
    fits: onRear,
    apply: atInputs(REAR, PAIR_BROKEN),
  },
  {
    id: 'signal-lead-open',
    variant: 'one-wire',
    title: 'One wire of one input pair open',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 4 },
    fits: hasAmp,
    apply: (world) =>
      withAmp(world, ({ inputPlug, inputs }) => {
        const input = inputs['rear-left'] ? 'rear-left' : 'front-left';
        return { inputPlug: { ...inputPlug, [input]: { ...inputPlug[input], plus: BROKEN } } };
      }),
  },
  {
    id: 'signal-lead-beside-power',
    title: 'Signal lead beside the charging lead',
    severity: decades('noiseV', 0.02, 0.1),
    weights: { 'whine-or-ticking': 5, 'eq-changes-when-engine-starts': 2 },
    fits: hasAmp,
    apply: (world, levelV) => withNoise(world, { kind: 'follows', enters: 'amp-input', levelV }),
  },
  {
    id: 'ground-loop-two-points',
    title: 'Amplifier and source grounded at two points',
    severity: decades('noiseV', 0.02, 0.1),
    weights: { 'whine-or-ticking': 7, 'eq-changes-when-engine-starts': 2 },
    fits: hasAmp,
    apply: (world, levelV) => withNoise(world, { kind: 'follows', enters: 'amp-ground', levelV }),
  },
  {
    // A box that makes line level of speaker wires has a ground of its own, and its output one wire and a shield.
    id: 'ground-loop-two-points',
    variant: 'converter',
    title: 'Converter and amplifier grounded at two points',
    severity: decades('noiseV', 0.02, 0.1),
    weights: { 'whine-or-ticking': 7, 'eq-changes-when-engine-starts': 2 },
    fits: (world) => ampOf(world)?.converter === 'works',
    apply: (world, levelV) => withNoise(world, { kind: 'follows', enters: 'converter', levelV }),
  },
  {
    id: 'range-too-sensitive',
    title: 'Input range too sensitive for what comes in',
    severity: decades('inputLimitV', 0.5, 2),
    weights: { 'distortion-at-volume': 6, 'speakers-blow-again': 4 },
    fits: hasAmp,
    apply: (world, inputLimitV) => withAmp(world, { inputLimitV }),
  },
  {
    id: 'amp-input-too-low',
    title: 'Range or gain of the rear channels too low',
    // A gain knob spans some 26 dB; less than 20 dB too little is heard beside the front.
    severity: decades('gainRatio', 0.05, 0.09),
    weights: { 'no-rear-sound': 3 },
    fits: onRear,
    apply: (world, ratio) =>
      withAmp(world, ({ gainRatio }) => ({ gainRatio: { ...gainRatio, rear: ratio * gainRatio.rear } })),
  },
  {
    id: 'amp-input-too-low',
    variant: 'weak',
    title: 'Gain of the rear channels low',
    severity: decades('gainRatio', 0.12, 0.4),
    weights: { 'rear-weak': 5 },
    fits: onRear,
    apply: (world, ratio) =>
      withAmp(world, ({ gainRatio }) => ({ gainRatio: { ...gainRatio, rear: ratio * gainRatio.rear } })),
  },
  {
    id: 'amp-input-too-low',
    variant: 'unit-at-its-limit',
    title: 'Gain too low, made up for with the head unit',
    severity: even('gainRatio', 0.2, 0.5),
    weights: { 'distortion-at-volume': 4 },
    fits: hasAmp,
    apply: (world, ratio) =>
      withSettings(
        withAmp(world, ({ gainRatio }) => ({ gainRatio: times(ratio)(gainRatio) })),
        ({ topVolumeRatio }) => ({ topVolumeRatio: topVolumeRatio / ratio }),
      ),
  },
  {
    id: 'gain-too-high',
    title: 'Gain too high',
    severity: decades('gainRatio', 3, 15),
    weights: { 'distortion-at-volume': 8, 'whine-or-ticking': 5, 'speakers-blow-again': 8 },
    fits: hasAmp,
    apply: (world, ratio) => withAmp(world, ({ gainRatio }) => ({ gainRatio: times(ratio)(gainRatio) })),
  },
  {
    id: 'gain-too-high',
    variant: 'trips',
    title: 'Gain so high that it goes off when it is loud',
    severity: decades('gainRatio', 6, 20),
    weights: { 'cuts-out': 3 },
    fits: hasAmp,
    apply: (world, ratio) => withAmp(world, ({ gainRatio }) => ({ gainRatio: times(ratio)(gainRatio) })),
  },
  {
    id: 'highpass-off-with-boost',
    title: 'High-pass off and bass boosted',
    severity: even('bassBoostDb', 6, 13),
    weights: { 'distortion-at-volume': 8, 'speakers-blow-again': 8 },
    fits: hasAmp,
    apply: (world, bassBoostDb) => withAmp(world, { highpassHz: null, bassBoostDb }),
  },
  {
    id: 'highpass-too-high',
    title: 'High-pass too high',
    severity: even('cornerHz', 250, 400),
    weights: { 'thin-no-bass': 6 },
    fits: hasAmp,
    apply: (world, highpassHz) => withAmp(world, { highpassHz }),
  },
  {
    id: 'amp-channel-dead',
    variant: 'rear-pair',
    title: 'Rear channels of the amplifier dead',
    severity: null,
    weights: { 'no-rear-sound': 2 },
    fits: onRear,
    apply: (world) => withAmp(world, { deadChannels: REAR }),
  },
  {
    id: 'amp-channel-dead',
    variant: 'one',
    title: 'One channel of the amplifier dead',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 3 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { deadChannels: onRear(world) ? REAR_LEFT : ['front-left'] }),
  },
  {
    id: 'amp-channel-dead',
    variant: 'one-front',
    title: 'One front channel of the amplifier dead',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 1.5 },
    fits: (world) => drivesFront(world) && onRear(world),
    apply: (world) => withAmp(world, { deadChannels: FRONT_LEFT }),
  },
  {
    id: 'amp-channel-rough',
    title: 'One channel of the amplifier plays rough',
    severity: null,
    weights: { 'distortion-at-volume': 2 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { roughChannels: onRear(world) ? REAR_LEFT : ['front-left'] }),
  },
  {
    id: 'amp-dead',
    title: 'Amplifier dead',
    severity: null,
    weights: { 'amp-wont-turn-on': 4, 'no-rear-sound': 2, 'no-sound-at-all': 3 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { alive: false }),
  },
  {
    id: 'amp-dead',
    variant: 'internal-short',
    title: 'Amplifier shorted inside, its fuse open',
    severity: null,
    weights: { 'amp-wont-turn-on': 2 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { alive: false, fuseOpen: true, shortInside: { ohm: 0.05 } }),
  },
  {
    id: 'amp-body-fuse-open',
    title: 'The amplifier’s own fuse open',
    severity: null,
    weights: { 'amp-wont-turn-on': 3, 'no-sound-at-all': 2 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { bodyFuseOpen: true }),
  },
  {
    id: 'water-inside',
    variant: 'fault',
    title: 'Water in the amplifier, its fault light lit',
    severity: decades('leakOhm', 30, 300),
    weights: { 'amp-wont-turn-on': 2, 'battery-flat-or-low': 1 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { wet: 'fault', shortInside: { ohm } }),
  },
  {
    id: 'water-inside',
    variant: 'dark',
    title: 'Water in the amplifier, its lamp dark',
    severity: decades('leakOhm', 30, 300),
    weights: { 'amp-wont-turn-on': 1, 'battery-flat-or-low': 1 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { wet: 'dark', shortInside: { ohm } }),
  },
  {
    id: 'amp-output-dc',
    title: 'DC at an output of the amplifier',
    severity: even('outputDcV', 1.6, 6),
    weights: { 'amp-wont-turn-on': 2, 'speakers-blow-again': 3 },
    fits: hasAmp,
    apply: (world, outputDcV) => withAmp(world, { outputDcV }),
  },
  {
    id: 'amp-heat-protect',
    title: 'Amplifier too hot',
    severity: null,
    weights: { 'amp-wont-turn-on': 4, 'cuts-out': 6 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { coolsBadly: true }),
  },
  {
    id: 'amp-load-too-low',
    title: 'Speakers side by side, too few ohms for the amplifier',
    severity: even('ofRatedRatio', 0.25, 0.4),
    weights: { 'distortion-at-volume': 4, 'cuts-out': 5 },
    fits: (world) => hasRear(world) && onRear(world) && !noAmp(world),
    apply: (world, ratio) =>
      withSpeakers(world, REAR, { count: 2, wiring: 'parallel', coilOhm: 2 * ratio * ratedOhmOf(world) }),
  },
];
