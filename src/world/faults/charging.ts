import { restV } from '../elements/battery.ts';
import type { Supply, World } from '../state.ts';
import { always, decades, even, type Fault, hasAmp, withNoise, withSupply } from './kit.ts';

/** What two of three phases give of the current of all, and what the battery then shows of them. From memory. */
const TWO_PHASES_RATIO = 0.55;

/**
 * A battery that pays for the music, or that nothing fills, is nearly empty by the time somebody complains: a tenth of
 * its charge, and twice its inner ohms. Both from memory.
 */
const runDown = ({ openV, internalOhm }: Supply) => ({
  openV: Math.min(openV, restV(0.1)),
  internalOhm: 2 * internalOhm,
});

/** So many times the inner ohms, and as much less of everything else: it smooths less of the ripple, too. */
const worn = (world: World, times: number): World =>
  withSupply(world, ({ internalOhm, rippleV }) => ({
    internalOhm: times * internalOhm,
    rippleV: times * rippleV,
    capacityRatio: 1 / times,
  }));

/** Where the circuit inside a lithium battery of four cells takes it off. From memory. */
const CUT_OFF_V = 10.5;

/** Only such a battery guards itself. */
const isLithium = ({ rig }: World): boolean => rig.batteryKind === 'lithium';

/** Faults of battery and charging, of what draws from them, and of what they put into the sound. */
export const CHARGING_FAULTS: readonly Fault[] = [
  {
    id: 'battery-worn',
    title: 'Battery worn out',
    severity: even('timesInternalRatio', 2, 6),
    weights: {
      'battery-flat-or-low': 8,
      'cuts-out': 5,
      'distortion-at-volume': 4,
      'whine-or-ticking': 3,
      'eq-changes-when-engine-starts': 2,
    },
    fits: always,
    apply: worn,
  },
  {
    id: 'battery-cuts-off',
    title: 'Lithium battery that switches itself off under load',
    severity: even('timesInternalRatio', 3, 6),
    weights: { 'cuts-out': 2, 'battery-flat-or-low': 1 },
    fits: isLithium,
    apply: (world, times) => withSupply(worn(world, times), { cutOffV: CUT_OFF_V }),
  },
  {
    id: 'battery-cuts-off',
    variant: 'empty',
    title: 'Lithium battery that has switched itself off, empty',
    severity: even('openV', 9, 10.4),
    weights: { 'no-sound-at-all': 2, 'battery-flat-or-low': 2 },
    fits: isLithium,
    apply: (world, openV) => withSupply(world, { cutOffV: CUT_OFF_V, openV }),
  },
  {
    id: 'battery-undercharged',
    title: 'Battery never full',
    severity: even('openV', 11.6, 12.1),
    weights: { 'battery-flat-or-low': 7 },
    fits: always,
    apply: (world, openV) => withSupply(world, { openV }),
  },
  {
    id: 'battery-undercharged',
    variant: 'stood',
    title: 'Battery emptied by months of standing',
    severity: even('openV', 9.5, 11.5),
    weights: { 'battery-flat-or-low': 4, 'amp-wont-turn-on': 1 },
    fits: always,
    apply: (world, openV) => withSupply(world, { openV }),
  },
  {
    id: 'regulator-out-of-range',
    variant: 'low',
    title: 'Regulator passes too little',
    severity: even('regulatorV', 12.4, 13.0),
    weights: {
      'battery-flat-or-low': 4,
      'cuts-out': 3,
      'distortion-at-volume': 2,
      'eq-changes-when-engine-starts': 1,
    },
    fits: always,
    apply: (world, regulatorV) => withSupply(world, (supply) => ({ regulatorV, ...runDown(supply) })),
  },
  {
    id: 'regulator-out-of-range',
    variant: 'high',
    title: 'Regulator does not limit',
    severity: even('regulatorV', 15.4, 17),
    weights: { 'battery-flat-or-low': 2 },
    fits: always,
    apply: (world, regulatorV) => withSupply(world, { regulatorV }),
  },
  {
    id: 'regulator-ripple',
    title: 'A rectifier element open or shorted',
    severity: even('rippleV', 0.8, 2.5),
    weights: { 'whine-or-ticking': 4, 'eq-changes-when-engine-starts': 0.5 },
    fits: always,
    apply: (world, rippleV) => withSupply(world, { rippleV }),
  },
  {
    id: 'stator-phase-lost',
    title: 'A phase of the stator lost',
    severity: even('rippleV', 0.6, 1.5),
    weights: { 'battery-flat-or-low': 4, 'whine-or-ticking': 3, 'eq-changes-when-engine-starts': 0.5 },
    fits: always,
    apply: (world, rippleV) =>
      withSupply(world, ({ idleA, cruiseA }) => ({
        rippleV,
        idleA: TWO_PHASES_RATIO * idleA,
        cruiseA: TWO_PHASES_RATIO * cruiseA,
      })),
  },
  {
    id: 'load-above-idle-output',
    title: 'More load at idle than the stator makes',
    severity: even('extraA', 8, 16),
    weights: { 'battery-flat-or-low': 7, 'distortion-at-volume': 4, 'eq-changes-when-engine-starts': 3 },
    fits: always,
    apply: (world, extraA) =>
      withSupply(world, (supply) => ({
        ...runDown(supply),
        baseA: { ...supply.baseA, idle: supply.baseA.idle + extraA, cruise: supply.baseA.cruise + extraA },
      })),
  },
  {
    id: 'draw-from-other-device',
    title: 'Something else stays on with the key off',
    severity: decades('drawA', 0.08, 1.5),
    weights: { 'battery-flat-or-low': 6 },
    fits: always,
    apply: (world, drawA) => withSupply(world, ({ asleepA }) => ({ asleepA: asleepA + drawA })),
  },
  {
    id: 'ignition-noise',
    title: 'Sparks that radiate into signal leads',
    severity: decades('noiseV', 0.02, 0.1),
    weights: { 'whine-or-ticking': 4 },
    fits: hasAmp,
    apply: (world, levelV) => withNoise(world, { kind: 'ticks', enters: 'amp-input', levelV }),
  },
  {
    id: 'lamp-or-charger-noise',
    title: 'Lamp or charger that whistles',
    severity: decades('noiseV', 0.02, 0.1),
    weights: { 'whine-or-ticking': 4 },
    fits: hasAmp,
    apply: (world, levelV) => withNoise(world, { kind: 'steady', enters: 'amp-input', levelV }),
  },
  {
    id: 'bass-masked-by-noise',
    title: 'Engine and wind cover the bass',
    severity: even('maskedDb', 6, 15),
    weights: { 'eq-changes-when-engine-starts': 6, 'thin-no-bass': 5 },
    fits: always,
    apply: (world, maskedBassDb) => ({ ...world, maskedBassDb }),
  },
];
