import { OPEN } from '../healthy.ts';
import type { World } from '../state.ts';
import { always, decades, even, type Fault, hasAmp, withAmp, withSupply, withUnit } from './kit.ts';

/** A wire that was there, of a circuit for 10 or 15 A, over what the amplifier wants. */
const TAPPED_RATIO = [0.07, 0.17] as const;
/** Hook-up wire on the ground, from half to three quarters of a square millimetre: nobody looks at that end. An estimate. */
const HOOK_UP_RATIO = [0.03, 0.09] as const;
/** A lead that looks as thick as it should: much insulation, a quarter of the metal, and that copper-clad aluminium. */
const CLAD_SECTION_RATIO = [0.12, 0.27] as const;
/** From here on music at an ordinary level pulls the amplifier below its least volts; less than that makes it chatter. */
const STEADILY_OFF_OHM = 2.2;
/** So much on each of two leads: one of them alone would not keep it off. */
const HALF_OHM = [STEADILY_OFF_OHM, 1.9 * STEADILY_OFF_OHM] as const;
/** From here on a shared screw keeps the amplifier off at an ordinary level, and with music the head unit too. */
const SCREW_OFF_OHM = [1.2, 1.7] as const;
/** Bare strands on metal. */
const SHORT_OHM = 0.05;

/** Whatever either of them draws lifts the ground of both. */
const onOneScrew = (world: World, ohm: number): World =>
  withSupply(world, { sharedScrew: { joint: { ohm }, holds: 'both' } });

/** Faults of the way from the battery to amplifier and head unit, and back. */
export const POWER_FAULTS: readonly Fault[] = [
  {
    id: 'main-fuse-open',
    title: 'Main fuse of the amplifier open',
    severity: null,
    weights: { 'amp-wont-turn-on': 7, 'no-rear-sound': 4, 'no-sound-at-all': 6 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { fuseOpen: true }),
  },
  {
    id: 'fuse-holder-resistive',
    title: 'Fuse holder with a bad contact',
    severity: decades('holderOhm', 0.02, 0.1),
    weights: { 'distortion-at-volume': 4, 'cuts-out': 6 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { holder: { ohm, movedOhm: Infinity } }),
  },
  {
    id: 'fuse-holder-resistive',
    variant: 'severe',
    title: 'Fuse holder with hardly any contact',
    severity: decades('holderOhm', STEADILY_OFF_OHM, 20),
    weights: { 'amp-wont-turn-on': 4 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { holder: { ohm } }),
  },
  {
    id: 'fuse-holder-open',
    title: 'Fuse holder open, its fuse whole',
    severity: null,
    weights: { 'amp-wont-turn-on': 3, 'no-rear-sound': 2, 'no-sound-at-all': 2 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { holder: OPEN }),
  },
  {
    // A breaker trips by heat: beside the engine it opens at currents that it carries in the cool.
    id: 'breaker-trips-hot',
    title: 'Breaker in the positive lead that the engine heats',
    severity: null,
    weights: { 'cuts-out': 3 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { holder: { ohm: 2e-3, hotOhm: Infinity } }),
  },
  {
    id: 'plus-lead-too-thin',
    title: 'Positive lead too thin',
    severity: even('sectionRatio', ...TAPPED_RATIO),
    weights: { 'distortion-at-volume': 4, 'cuts-out': 5 },
    fits: hasAmp,
    apply: (world, ratio) =>
      withAmp(world, ({ plusLead }) => ({ plusLead: { ...plusLead, sectionM2: ratio * plusLead.sectionM2 } })),
  },
  {
    id: 'ground-lead-too-thin',
    title: 'Ground lead far thinner than the positive one',
    severity: even('sectionRatio', ...HOOK_UP_RATIO),
    weights: { 'distortion-at-volume': 2, 'cuts-out': 3 },
    fits: hasAmp,
    apply: (world, ratio) =>
      withAmp(world, ({ groundLead }) => ({ groundLead: { ...groundLead, sectionM2: ratio * groundLead.sectionM2 } })),
  },
  {
    id: 'plus-lead-clad',
    title: 'Positive lead of copper-clad aluminium',
    severity: even('sectionRatio', ...CLAD_SECTION_RATIO),
    weights: { 'distortion-at-volume': 3, 'cuts-out': 3 },
    fits: hasAmp,
    apply: (world, ratio) =>
      withAmp(world, ({ plusLead }) => ({
        plusLead: { ...plusLead, sectionM2: ratio * plusLead.sectionM2, metal: 'clad' },
      })),
  },
  {
    id: 'plus-lead-broken',
    title: 'Positive lead broken inside',
    severity: null,
    weights: { 'amp-wont-turn-on': 2, 'no-rear-sound': 1, 'no-sound-at-all': 1 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { plusCopper: OPEN }),
  },
  {
    id: 'plus-lead-broken',
    variant: 'intermittent',
    title: 'Positive lead that opens on bumps',
    severity: null,
    weights: { 'cuts-out': 2 },
    fits: hasAmp,
    apply: (world) => withAmp(world, ({ plusCopper }) => ({ plusCopper: { ...plusCopper, movedOhm: Infinity } })),
  },
  {
    id: 'both-leads-bad',
    title: 'Positive and ground both half bad',
    severity: even('togetherOhm', ...HALF_OHM),
    weights: { 'amp-wont-turn-on': 2 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { plusCopper: { ohm: ohm / 2 }, groundRing: { ohm: ohm / 2 } }),
  },
  {
    id: 'amp-terminal-loose',
    variant: 'severe',
    title: 'Positive lead hardly held by the amplifier’s terminal',
    severity: decades('terminalOhm', STEADILY_OFF_OHM, 20),
    weights: { 'amp-wont-turn-on': 3 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { terminal: { ohm } }),
  },
  {
    id: 'amp-terminal-loose',
    variant: 'bumps',
    title: 'Positive lead loose in the amplifier’s terminal',
    severity: decades('terminalOhm', 2e-3, 0.05),
    weights: { 'cuts-out': 5 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { terminal: { ohm, movedOhm: Infinity } }),
  },
  {
    id: 'battery-lug-loose',
    variant: 'amp-ring',
    title: 'Amplifier’s ring loose at the battery',
    severity: decades('ringOhm', STEADILY_OFF_OHM, 1000),
    weights: { 'amp-wont-turn-on': 4 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { ring: { ohm, movedOhm: 1e-3 } }),
  },
  {
    id: 'battery-lug-loose',
    variant: 'amp-minus-ring',
    title: 'Ring of the amplifier’s ground loose at the battery',
    severity: decades('ringOhm', STEADILY_OFF_OHM, 1000),
    weights: { 'amp-wont-turn-on': 2 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { minusRing: { ohm, movedOhm: 1e-3 } }),
  },
  {
    id: 'battery-lug-loose',
    variant: 'amp-ring-on-bumps',
    title: 'Amplifier’s ring at the battery that opens on bumps',
    severity: decades('ringOhm', 2e-3, 0.05),
    weights: { 'cuts-out': 5 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { ring: { ohm, movedOhm: Infinity } }),
  },
  {
    id: 'battery-lug-loose',
    variant: 'battery-post',
    title: 'Bike’s own ring loose at the battery',
    severity: decades('ringOhm', 0.01, 0.1),
    weights: { 'cuts-out': 6, 'battery-flat-or-low': 4 },
    fits: always,
    apply: (world, ohm) => withSupply(world, { bikeRing: { ohm, movedOhm: Infinity } }),
  },
  {
    id: 'unit-feed-missing',
    title: 'Head unit without one of its feeds',
    severity: null,
    weights: { 'no-sound-at-all': 5 },
    fits: always,
    apply: (world) => withUnit(world, { permanent: { ...OPEN, wants: 'pin' } }),
  },
  {
    id: 'unit-feed-missing',
    variant: 'intermittent',
    title: 'Head unit whose feed drops out on bumps',
    severity: null,
    weights: { 'cuts-out': 4 },
    fits: always,
    apply: (world) =>
      withUnit(world, ({ switched }) => ({ switched: { ...switched, movedOhm: Infinity, wants: 'pin' } })),
  },
  {
    id: 'amp-ground-resistive',
    title: 'Ground of the amplifier with resistance',
    severity: decades('groundOhm', 0.05, 0.6),
    weights: { 'distortion-at-volume': 6, 'whine-or-ticking': 6, 'cuts-out': 7, 'eq-changes-when-engine-starts': 1 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { groundRing: { ohm, movedOhm: Infinity } }),
  },
  {
    id: 'amp-ground-resistive',
    variant: 'severe',
    title: 'Ground of the amplifier hardly there',
    severity: decades('groundOhm', STEADILY_OFF_OHM, 20),
    weights: { 'amp-wont-turn-on': 4 },
    fits: hasAmp,
    apply: (world, ohm) => withAmp(world, { groundRing: { ohm } }),
  },
  {
    id: 'amp-ground-open',
    title: 'Ground of the amplifier open',
    severity: null,
    weights: { 'amp-wont-turn-on': 5, 'no-rear-sound': 3, 'no-sound-at-all': 4 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { groundRing: OPEN }),
  },
  {
    id: 'shared-ground-screw',
    title: 'Amplifier and head unit on one bad ground screw',
    severity: decades('screwOhm', 0.05, 0.5),
    weights: { 'cuts-out': 4, 'distortion-at-volume': 3 },
    fits: hasAmp,
    apply: onOneScrew,
  },
  {
    id: 'shared-ground-screw',
    variant: 'severe',
    title: 'Amplifier and head unit on one ground screw that hardly holds',
    severity: even('screwOhm', ...SCREW_OFF_OHM),
    weights: { 'amp-wont-turn-on': 2, 'no-sound-at-all': 1 },
    fits: hasAmp,
    apply: onOneScrew,
  },
  {
    id: 'wire-chafed',
    variant: 'plus-lead',
    title: 'Positive lead chafed through, its fuse open',
    severity: null,
    weights: { 'amp-wont-turn-on': 3 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { fuseOpen: true, leadToFrame: { ohm: SHORT_OHM } }),
  },
];
