import { OPEN } from '../healthy.ts';
import { always, decades, even, type Fault, hasAmp, withAmp, withSupply, withUnit } from './kit.ts';

/** A lead that looks thick outside and has a third of the copper, which is aluminium inside. */
const THIN_SECTION_RATIO = 1 / 4;

/** From here on music at an ordinary level pulls the amplifier below its least volts; less than that makes it chatter. */
const STEADILY_OFF_OHM = 2.2;
/** Bare strands on metal. */
const SHORT_OHM = 0.05;

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
    id: 'plus-lead-too-thin',
    title: 'Plus lead too thin',
    severity: even('sectionRatio', 0.1, THIN_SECTION_RATIO),
    weights: { 'distortion-at-volume': 4, 'cuts-out': 5 },
    fits: hasAmp,
    apply: (world, ratio) =>
      withAmp(world, ({ plusLead }) => ({
        plusLead: { ...plusLead, sectionM2: ratio * plusLead.sectionM2, metal: 'clad' },
      })),
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
    weights: { 'distortion-at-volume': 6, 'whine-or-ticking': 6, 'cuts-out': 7 },
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
    weights: { 'amp-wont-turn-on': 5, 'no-rear-sound': 3 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { groundRing: OPEN }),
  },
  {
    id: 'wire-chafed',
    variant: 'plus-lead',
    title: 'Plus lead chafed through, its fuse open',
    severity: null,
    weights: { 'amp-wont-turn-on': 3 },
    fits: hasAmp,
    apply: (world) => withAmp(world, { fuseOpen: true, leadToFrame: { ohm: SHORT_OHM } }),
  },
];
