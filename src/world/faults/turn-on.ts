import { OPEN, shapeOf } from '../healthy.ts';
import {
  both,
  decades,
  even,
  type Fault,
  hasAmp,
  isFactory,
  theAmp,
  turnsOnBy,
  withAmp,
  withSupply,
  withUnit,
} from './kit.ts';

/** A sensing amplifier that was made for the unaltered output wakes somewhere here. By its papers; from memory. */
const STARVED_SENSE = even('senseV', 0.45, 0.85);

/** With the 2.2 kΩ of a remote input these leave 3.4 to 8.4 V of 12.6 V: what leaves next to nothing is as good as open. */
const WEAK_REMOTE = decades('remoteOhm', 1_100, 6_000);

/** Faults of what switches an amplifier on. */
export const TURN_ON_FAULTS: readonly Fault[] = [
  {
    id: 'remote-wire-open',
    title: 'Remote wire open',
    severity: null,
    weights: { 'amp-wont-turn-on': 7, 'no-rear-sound': 5, 'no-sound-at-all': 6 },
    fits: turnsOnBy('wire'),
    apply: (world) => withAmp(world, { remoteWire: OPEN }),
  },
  {
    id: 'remote-wire-open',
    variant: 'intermittent',
    title: 'Remote wire that opens on bumps',
    severity: null,
    weights: { 'cuts-out': 5 },
    fits: turnsOnBy('wire'),
    apply: (world) => withAmp(world, ({ remoteWire }) => ({ remoteWire: { ...remoteWire, movedOhm: Infinity } })),
  },
  {
    id: 'remote-wire-open',
    variant: 'bad-joint',
    title: 'Remote wire with a joint that hardly conducts',
    severity: WEAK_REMOTE,
    weights: { 'amp-wont-turn-on': 3, 'cuts-out': 2 },
    fits: turnsOnBy('wire'),
    apply: (world, ohm) => withAmp(world, { remoteWire: { ohm } }),
  },
  {
    id: 'remote-source-dead',
    title: 'Remote wire on a feed that never comes on',
    severity: null,
    weights: { 'amp-wont-turn-on': 5, 'no-rear-sound': 3, 'no-sound-at-all': 3 },
    fits: turnsOnBy('wire'),
    apply: (world) => withAmp(world, { remoteSource: 'dead' }),
  },
  {
    id: 'remote-volts-low',
    title: 'Too few volts on the remote wire',
    severity: WEAK_REMOTE,
    weights: { 'amp-wont-turn-on': 3, 'cuts-out': 3 },
    fits: turnsOnBy('wire'),
    apply: (world, ohm) => withAmp(world, { remoteSourceOhm: ohm }),
  },
  {
    id: 'remote-on-permanent',
    title: 'Remote wire on a feed that never goes off',
    severity: null,
    weights: { 'battery-flat-or-low': 7 },
    fits: turnsOnBy('wire'),
    apply: (world) => withAmp(world, { remoteSource: 'permanent' }),
  },
  {
    id: 'remote-on-permanent',
    variant: 'emptied',
    title: 'Remote wire on a feed that never goes off, and the battery empty by it',
    severity: even('openV', 9.5, 11.5),
    weights: { 'battery-flat-or-low': 4, 'amp-wont-turn-on': 1 },
    fits: turnsOnBy('wire'),
    apply: (world, openV) => withSupply(withAmp(world, { remoteSource: 'permanent' }), { openV }),
  },
  {
    id: 'sense-starved-by-profile',
    title: 'Listening amplifier that hears too little',
    severity: STARVED_SENSE,
    weights: { 'amp-wont-turn-on': 5, 'no-rear-sound': 4, 'no-sound-at-all': 4 },
    fits: both(turnsOnBy('signal'), isFactory, ({ rig, ...world }) => {
      const at = theAmp({ rig, ...world });
      return at !== null && rig.amps[at]?.needs === 'unaltered';
    }),
    apply: (world, senseV) =>
      withUnit(withAmp(world, { senseV }), {
        profile: shapeOf(world.rig, 'amplified-same'),
      }),
  },
  {
    id: 'sense-no-half-supply',
    title: 'Amplifier that waits for DC which does not come',
    severity: null,
    weights: { 'amp-wont-turn-on': 4 },
    fits: turnsOnBy('dc'),
    apply: (world) => withAmp(world, { passesDc: false }),
  },
  {
    id: 'turn-on-mode-wrong',
    variant: 'sense-but-wire-used',
    title: 'Turn-on selector on sensing, wire used',
    severity: STARVED_SENSE,
    weights: { 'amp-wont-turn-on': 2, 'no-rear-sound': 3 },
    fits: turnsOnBy('wire'),
    apply: (world, senseV) => withAmp(world, { turnOn: 'signal', senseV }),
  },
  {
    id: 'turn-on-mode-wrong',
    variant: 'wire-but-none-fitted',
    title: 'Turn-on selector on wire, none fitted',
    severity: null,
    weights: { 'amp-wont-turn-on': 3, 'no-rear-sound': 3 },
    fits: turnsOnBy('signal', 'dc'),
    apply: (world) => withAmp(world, { turnOn: 'wire' }),
  },
  {
    id: 'sense-sleeps-in-quiet',
    title: 'Listening amplifier that falls asleep in quiet music',
    severity: null,
    weights: { 'cuts-out': 4 },
    fits: turnsOnBy('signal'),
    apply: (world) => withAmp(world, { sleepsInQuiet: true }),
  },
  {
    id: 'channel-mode-wrong',
    title: 'Input selector of the amplifier wrong',
    severity: null,
    weights: { 'no-rear-sound': 5 },
    fits: hasAmp,
    apply: (world) => withAmp(world, ({ inputMode }) => ({ inputMode: inputMode === 'two' ? 'four' : 'two' })),
  },
];
