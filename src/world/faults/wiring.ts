import { CORNERS, type Corner } from '../../rig/corner.ts';
import { OPEN } from '../healthy.ts';
import type { Run, World } from '../state.ts';
import { driverOf, isFitted } from '../valued-rig.ts';
import {
  always,
  decades,
  even,
  type Fault,
  hasRear,
  hasRearPlug,
  REAR,
  REAR_LEFT,
  type Severity,
  withRuns,
  withSpeakers,
  withUnit,
} from './kit.ts';

const FRONT_LEFT: readonly Corner[] = ['front-left'];

type Change = (severity: number) => Partial<Run>;
type Weights = Fault['weights'];

const cornersAmplified = ({ rig, about }: World): readonly Corner[] =>
  CORNERS.filter((corner) => isFitted(rig, corner) && driverOf(rig, corner) === about);

/** What only a lead with a plug at the lid can have. */
const AT_THE_PLUG = ['rear-plug-off', 'lid-contacts-dirty'];

/** A fault of a run: of both rear ones for a rear that is silent, of one for a speaker that is. */
const onRuns = (
  id: string,
  title: string,
  severity: Severity | null,
  change: Change,
  weights: { both?: Weights; one?: Weights; front?: Weights },
): readonly Fault[] => {
  const made = (variant: string, corners: readonly Corner[], own: Weights): Fault => ({
    id,
    variant,
    title,
    severity,
    weights: own,
    fits: corners === FRONT_LEFT ? always : AT_THE_PLUG.includes(id) ? hasRearPlug : hasRear,
    apply: (world: World, at) => withRuns(world, corners, change(at)),
  });
  return [
    ...(weights.both ? [made('both-rear', REAR, weights.both)] : []),
    ...(weights.one ? [made('one-rear', REAR_LEFT, weights.one)] : []),
    ...(weights.front ? [made('one-front', FRONT_LEFT, weights.front)] : []),
  ];
};

/** The same where what drives the run protects each channel by itself. */
const onItsOwnChannel = (fault: Fault): Fault => ({
  ...fault,
  variant: `${fault.variant}-alone`,
  apply: (world, at) => {
    const unit = withUnit(world, { protectsAlone: true });
    return fault.apply({ ...unit, amps: unit.amps.map((amp) => ({ ...amp, protectsAlone: true })) }, at);
  },
});

/** Faults between an output and a coil. */
export const WIRING_FAULTS: readonly Fault[] = [
  ...onRuns('rear-plug-off', 'Rear plug not home', null, () => ({ dock: OPEN }), {
    both: { 'no-rear-sound': 8 },
    one: { 'one-speaker-or-side-dead': 7 },
  }),
  ...onRuns(
    'lid-lead-broken',
    'Lead into the lid broken inside',
    null,
    () => ({ lidLead: { ohm: Infinity, movedOhm: 0.1 } }),
    {
      both: { 'no-rear-sound': 2 },
      one: { 'one-speaker-or-side-dead': 4 },
    },
  ),
  ...onRuns(
    'lid-lead-broken',
    'Lead into the lid parted inside: no movement joins it any more',
    null,
    () => ({ lidLead: OPEN }),
    {
      both: { 'no-rear-sound': 1 },
      one: { 'one-speaker-or-side-dead': 2 },
    },
  ).map((fault) => ({ ...fault, variant: `${fault.variant}-parted` })),
  ...onRuns(
    'lid-lead-broken',
    'Lead into the lid that opens as it moves',
    null,
    () => ({ lidLead: { ohm: 0.1, movedOhm: Infinity } }),
    {
      one: { 'cuts-out': 6 },
    },
  ).map((fault) => ({ ...fault, variant: 'intermittent' })),
  ...onRuns(
    'lid-contacts-dirty',
    'Dirty plug contacts',
    decades('dockOhm', 30, 1e6),
    (ohm) => ({ dock: { ohm, movedOhm: 0.5, wants: 'cleaning' } }),
    {
      both: { 'no-rear-sound': 3 },
      one: { 'one-speaker-or-side-dead': 4 },
    },
  ),
  ...onRuns(
    'lid-contacts-dirty',
    'Plug contacts grown green, which no push wipes clean',
    decades('dockOhm', 100, 1e6),
    (ohm) => ({ dock: { ohm, wants: 'cleaning' } }),
    {
      both: { 'no-rear-sound': 2 },
      one: { 'one-speaker-or-side-dead': 2 },
    },
  ).map((fault) => ({ ...fault, variant: `${fault.variant}-green` })),
  ...onRuns(
    'lid-contacts-dirty',
    'Dirty plug contacts that open on bumps',
    decades('dockOhm', 1, 4),
    (ohm) => ({ dock: { ohm, movedOhm: Infinity, wants: 'cleaning' } }),
    {
      one: { 'cuts-out': 6 },
    },
  ).map((fault) => ({ ...fault, variant: 'intermittent' })),
  ...onRuns(
    'lid-contacts-dirty',
    'Film on plug contacts that lets some sound by',
    decades('dockOhm', 2, 6),
    (ohm) => ({ dock: { ohm, movedOhm: 0.5, wants: 'cleaning' } }),
    {
      both: { 'rear-weak': 3 },
    },
  ).map((fault) => ({ ...fault, variant: 'weak' })),
  ...onRuns(
    'lid-contacts-dirty',
    'Film on one plug’s contacts that lets some sound by',
    decades('dockOhm', 4, 8),
    (ohm) => ({ dock: { ohm, movedOhm: 0.5, wants: 'cleaning' } }),
    { one: { 'one-side-weak': 5 } },
  ).map((fault) => ({ ...fault, variant: 'one-weak' })),
  ...onRuns('front-plug-off', 'Plug of a front speaker not home', null, () => ({ dock: OPEN }), {
    front: { 'one-speaker-or-side-dead': 6 },
  }),
  ...onRuns(
    'front-contacts-dirty',
    'Dirty contacts of a front speaker’s plug',
    decades('dockOhm', 30, 1e6),
    (ohm) => ({ dock: { ohm, movedOhm: 0.5, wants: 'cleaning' } }),
    { front: { 'one-speaker-or-side-dead': 3 } },
  ),
  ...onRuns(
    'front-contacts-dirty',
    'Film on a front speaker’s plug that lets some sound by',
    decades('dockOhm', 4, 8),
    (ohm) => ({ dock: { ohm, movedOhm: 0.5, wants: 'cleaning' } }),
    { front: { 'one-side-weak': 4 } },
  ).map((fault) => ({ ...fault, variant: 'weak' })),
  ...onRuns(
    'second-connector-dirty',
    'Dirty second connector of the rear run',
    decades('secondOhm', 30, 1e6),
    (ohm) => ({ second: { ohm, movedOhm: 0.5, wants: 'cleaning' } }),
    {
      both: { 'no-rear-sound': 2 },
      one: { 'one-speaker-or-side-dead': 3 },
    },
  ),
  ...onRuns(
    'second-connector-dirty',
    'Green second connector of the rear run',
    null,
    () => ({ second: { ohm: Infinity, movedOhm: 0.5, wants: 'cleaning' } }),
    {
      both: { 'no-rear-sound': 1 },
    },
  ).map((fault) => ({ ...fault, variant: 'open' })),
  ...onRuns(
    'second-connector-dirty',
    'Film on a second connector that lets some sound by',
    decades('secondOhm', 2, 6),
    (ohm) => ({ second: { ohm, movedOhm: 0.5, wants: 'cleaning' } }),
    {
      both: { 'rear-weak': 2 },
    },
  ).map((fault) => ({ ...fault, variant: 'weak' })),
  ...onRuns(
    'second-connector-dirty',
    'Film on a second connector of one side that lets some sound by',
    decades('secondOhm', 4, 8),
    (ohm) => ({ second: { ohm, movedOhm: 0.5, wants: 'cleaning' } }),
    { one: { 'one-side-weak': 2 } },
  ).map((fault) => ({ ...fault, variant: 'one-weak' })),
  {
    id: 'looms-unjoined',
    title: 'Two halves of the rear loom never joined',
    severity: null,
    weights: { 'no-rear-sound': 2 },
    fits: hasRear,
    apply: (world) => withRuns(world, REAR, { second: { ...OPEN, wants: 'joining' } }),
  },
  ...onRuns(
    'looms-unjoined',
    'Loom of one rear side never joined',
    null,
    () => ({ second: { ...OPEN, wants: 'joining' } }),
    {
      one: { 'one-speaker-or-side-dead': 1 },
    },
  ),
  ...onRuns(
    'speaker-wire-open',
    'Rear speaker wire open',
    null,
    () => ({ joint: { plus: OPEN, minus: { ohm: 1e-3 } } }),
    {
      both: { 'no-rear-sound': 3 },
      one: { 'one-speaker-or-side-dead': 6 },
    },
  ),
  ...onRuns(
    'speaker-wire-open',
    'Splice in each rear speaker wire gone green',
    decades('spliceOhm', 60, 1e6),
    (ohm) => ({ joint: { plus: { ohm }, minus: { ohm: 1e-3 } } }),
    {
      both: { 'no-rear-sound': 1 },
    },
  ).map((fault) => ({ ...fault, variant: 'splice-green' })),
  ...onRuns(
    'speaker-wire-open',
    'Front speaker wire open',
    null,
    () => ({ joint: { plus: OPEN, minus: { ohm: 1e-3 } } }),
    {
      front: { 'one-speaker-or-side-dead': 4 },
    },
  ),
  ...onRuns(
    'speaker-wire-open',
    'Front speaker wire broken at the steering, its ends side by side',
    null,
    () => ({ joint: { plus: { ohm: Infinity, movedOhm: 0.1 }, minus: { ohm: 1e-3 } } }),
    { front: { 'one-speaker-or-side-dead': 3 } },
  ).map((fault) => ({ ...fault, variant: 'at-the-steering' })),
  ...onRuns(
    'speaker-wire-open',
    'Rear speaker wire pinched under the seat, its ends side by side',
    null,
    () => ({ joint: { plus: { ohm: Infinity, movedOhm: 0.1 }, minus: { ohm: 1e-3 } } }),
    { one: { 'one-speaker-or-side-dead': 3 } },
  ).map((fault) => ({ ...fault, variant: 'under-the-seat' })),
  ...onRuns(
    'speaker-wire-to-frame',
    'Rear speaker wire on the frame',
    decades('frameOhm', 0.02, 0.3),
    (ohm) => ({ toFrame: { ohm } }),
    {
      both: { 'no-rear-sound': 4, 'amp-wont-turn-on': 5 },
      one: { 'no-rear-sound': 4, 'amp-wont-turn-on': 5, 'no-sound-at-all': 4 },
    },
  ),
  ...onRuns(
    'speaker-wire-to-frame',
    'Rear speaker wire that touches the frame as the lid moves',
    null,
    () => ({ toFrame: { ohm: Infinity, movedOhm: 0.05 } }),
    {
      one: { 'cuts-out': 5 },
    },
  ).map((fault) => ({ ...fault, variant: 'lid-moves' })),
  ...onRuns(
    'speaker-wire-to-frame',
    'Rear speaker wire on the frame while the lid is shut',
    decades('frameOhm', 0.02, 0.3),
    (ohm) => ({ toFrame: { ohm, movedOhm: Infinity } }),
    {
      one: { 'no-rear-sound': 2, 'amp-wont-turn-on': 2 },
    },
  ).map((fault) => ({ ...fault, variant: 'lid-shut' })),
  ...onRuns(
    'speaker-pair-shorted',
    'Rear run shorted',
    decades('acrossOhm', 0.01, 0.1),
    (ohm) => ({ acrossPair: { ohm } }),
    {
      both: { 'no-rear-sound': 1, 'amp-wont-turn-on': 3 },
      // What drives it mostly protects itself as a whole, or both channels of an axle.
      one: { 'amp-wont-turn-on': 3 },
    },
  ),
  ...(['one-rear', 'one-front'] as const)
    .flatMap((variant) => [
      ...onRuns(
        'speaker-wire-to-frame',
        'Speaker wire on the frame that silences its own channel only',
        decades('frameOhm', 0.02, 0.3),
        (ohm) => ({ toFrame: { ohm } }),
        { [variant === 'one-rear' ? 'one' : 'front']: { 'one-speaker-or-side-dead': 2 } },
      ),
      ...onRuns(
        'speaker-pair-shorted',
        'Run shorted that silences its own channel only',
        decades('acrossOhm', 0.01, 0.1),
        (ohm) => ({ acrossPair: { ohm } }),
        { [variant === 'one-rear' ? 'one' : 'front']: { 'one-speaker-or-side-dead': 1.5 } },
      ),
    ])
    .map(onItsOwnChannel),
  ...onRuns(
    'wire-chafed',
    'Speaker run that opens at full lock',
    null,
    () => ({ joint: { plus: { ohm: 1e-3, movedOhm: Infinity }, minus: { ohm: 1e-3 } } }),
    {
      one: { 'cuts-out': 5 },
    },
  ).map((fault) => ({ ...fault, variant: 'speaker-run' })),
  {
    id: 'polarity-one-of-pair',
    title: 'Positive and negative swapped at one speaker',
    severity: null,
    weights: { 'thin-no-bass': 6, 'bass-cancels': 6 },
    fits: always,
    apply: (world) => withRuns(world, ['front-left'], { reversed: true }),
  },
  {
    id: 'polarity-one-of-pair',
    variant: 'rear',
    title: 'Positive and negative swapped at one rear speaker',
    severity: null,
    weights: { 'thin-no-bass': 3, 'bass-cancels': 4 },
    fits: hasRear,
    apply: (world) => withRuns(world, REAR_LEFT, { reversed: true }),
  },
  {
    id: 'polarity-front-rear',
    title: 'Rear pair opposed to the front pair',
    severity: null,
    weights: { 'thin-no-bass': 6, 'bass-cancels': 4 },
    fits: hasRear,
    apply: (world) => withRuns(world, REAR, { reversed: true }),
  },
  {
    id: 'coil-open',
    variant: 'both-rear',
    title: 'Rear coils open',
    severity: null,
    weights: { 'no-rear-sound': 3 },
    fits: hasRear,
    apply: (world) => withSpeakers(world, REAR, { braid: OPEN }),
  },
  {
    id: 'coil-open',
    variant: 'one',
    title: 'A coil open',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 7 },
    fits: always,
    apply: (world) => withSpeakers(world, ['front-left'], { braid: OPEN }),
  },
  {
    id: 'coil-open',
    variant: 'one-rear',
    title: 'A rear coil open',
    severity: null,
    weights: { 'one-speaker-or-side-dead': 5 },
    fits: hasRear,
    apply: (world) => withSpeakers(world, REAR_LEFT, { braid: OPEN }),
  },
  {
    id: 'coil-open',
    variant: 'broken-braid',
    title: 'A braid that opens when it is moved or hot',
    severity: null,
    weights: { 'cuts-out': 3 },
    fits: always,
    apply: (world) =>
      withSpeakers(world, ['front-left'], { braid: { ohm: 0.05, movedOhm: Infinity, hotOhm: Infinity } }),
  },
  {
    id: 'coil-rubbing-or-cone-torn',
    title: 'Coil rubs or cone torn',
    severity: null,
    weights: { 'distortion-at-volume': 3 },
    fits: always,
    apply: (world) => withSpeakers(world, ['front-left'], { scrapes: 'always' }),
  },
  {
    // A basket that was bent by its screws: the coil is free until bass drives it far.
    id: 'coil-rubbing-or-cone-torn',
    variant: 'far',
    title: 'Coil rubs where bass drives it far',
    severity: null,
    weights: { 'distortion-at-volume': 3 },
    fits: always,
    apply: (world) => withSpeakers(world, ['front-left'], { scrapes: 'far' }),
  },
  {
    id: 'coil-rubbing-or-cone-torn',
    variant: 'rear',
    title: 'Rear coil rubs or cone torn',
    severity: null,
    weights: { 'distortion-at-volume': 2 },
    fits: hasRear,
    apply: (world) => withSpeakers(world, REAR_LEFT, { scrapes: 'always' }),
  },
  {
    id: 'coil-rubbing-or-cone-torn',
    variant: 'rear-far',
    title: 'Rear coil rubs where bass drives it far',
    severity: null,
    weights: { 'distortion-at-volume': 2 },
    fits: hasRear,
    apply: (world) => withSpeakers(world, REAR_LEFT, { scrapes: 'far' }),
  },
  {
    id: 'speaker-underrated',
    title: 'Speaker takes less than it is given',
    severity: even('ofGivenRatio', 0.2, 0.6),
    weights: { 'distortion-at-volume': 5, 'speakers-blow-again': 6 },
    fits: (world) => cornersAmplified(world).length > 0,
    apply: (world, ratio) => {
      const corners = cornersAmplified(world);
      return withSpeakers(world, corners, ({ ratedW }) => ({ ratedW: ratio * ratedW }));
    },
  },
  {
    id: 'speaker-mount-loose',
    title: 'Gaps around the speakers',
    severity: even('leakDb', 6, 15),
    weights: { 'thin-no-bass': 5 },
    fits: always,
    apply: (world, leakDb) => withSpeakers(world, ['front-left', 'front-right', ...REAR], { leakDb }),
  },
  {
    id: 'speaker-mount-loose',
    variant: 'front',
    title: 'A front speaker loose in its mount',
    severity: even('leakDb', 6, 15),
    weights: { 'distortion-at-volume': 3 },
    fits: always,
    apply: (world, leakDb) => withSpeakers(world, ['front-left'], { leakDb }),
  },
  {
    id: 'speaker-mount-loose',
    variant: 'rear',
    title: 'A rear speaker loose in its lid',
    severity: even('leakDb', 6, 15),
    weights: { 'distortion-at-volume': 4 },
    fits: hasRear,
    apply: (world, leakDb) => withSpeakers(world, REAR_LEFT, { leakDb }),
  },
  {
    id: 'trim-rattles',
    variant: 'front',
    title: 'A fairing panel or the screen buzzes along',
    severity: null,
    weights: { 'distortion-at-volume': 4 },
    fits: always,
    apply: (world) => ({ ...world, trimRattles: ['front'] }),
  },
  {
    id: 'trim-rattles',
    variant: 'rear',
    title: 'A lid lining or something in the case buzzes along',
    severity: null,
    weights: { 'distortion-at-volume': 2 },
    fits: hasRear,
    apply: (world) => ({ ...world, trimRattles: ['rear'] }),
  },
  {
    id: 'tweeter-unprotected',
    title: 'Tweeter without its capacitor',
    severity: null,
    weights: { 'speakers-blow-again': 3 },
    fits: always,
    apply: (world) => withSpeakers(world, ['front-left', 'front-right'], { bareTweeter: true }),
  },
];
