import type { MainFuse } from '../../causes/repair-action.ts';
import { operate } from '../bike/operate.ts';
import { withAmp, withSupply, withUnit } from '../change.ts';
import { FUSE_CARRIES_RATIO } from '../elements/fuse.ts';
import { CLAMP, LUG, OPEN, SOUND, WHOLE } from '../healthy.ts';
import { LAMP_FOR_FUSE, lampForFuse } from '../lamp-for-fuse.ts';
import { ORDINARY } from '../moment.ts';
import type { Amp, World } from '../state.ts';
import type { Repairs } from './repairs.ts';
import { sound, soundAmp } from './sound.ts';

/** Everything off: what a fuse carries now is no music. */
const AT_REST = { ...ORDINARY, key: 'off', toneHz: null, apart: ['remote', 'amp-outputs'] } as const;

/** Whether a main fuse carries what flows through it at rest. On a lead that lies on the frame it opens at once. */
function holds(world: World): boolean {
  const now = operate(world, AT_REST);
  const ratedA = world.amps[world.about ?? -1]?.fuseRatedA ?? 0;
  return now.ok && now.power.currentA(`fuse ${world.about}`).re <= FUSE_CARRIES_RATIO * ratedA;
}

/** Whether a lamp in the place of the fuse goes on shining. */
function lampStaysLit(world: World, i: number): boolean {
  const now = operate(withAmp(world, LAMP_FOR_FUSE), AT_REST);
  return !now.ok || lampForFuse(now, i) !== 'dark';
}

/** Less than this inside an amplifier opens its own fuse. */
const SHORTED_OHM = 0.3;

/** A main fuse is fitted; it stays whole if nothing behind it is shorted. */
function withFuse(
  world: World,
  { fuseA, atMostA = Infinity, onceLampIsDark }: Partial<MainFuse>,
  part: Partial<Amp> = {},
): World {
  if (world.about === null) return world;
  const fitted = withAmp(world, ({ fuseRatedA }) => ({
    ...part,
    fuseRatedA: Math.min(fuseA ?? fuseRatedA, atMostA),
    fuseOpen: false,
  }));
  return (onceLampIsDark && lampStaysLit(fitted, world.about)) || !holds(fitted)
    ? withAmp(fitted, { fuseOpen: true })
    : fitted;
}

/** Every ring on a post of the battery: they share a screw. */
const atEachAmp = (world: World, part: Partial<Amp>): World => ({
  ...world,
  amps: world.amps.map((amp) => ({ ...amp, ...part })),
});

/** Feeds and grounds, fuses, battery and charging, and what switches an amplifier on. */
export const POWER: Repairs<
  | 'renew-lead'
  | 'renew-holder'
  | 'renew-fuse'
  | 'tighten-joint'
  | 'own-ground'
  | 'move-remote'
  | 'fit-remote-relay'
  | 'wake-by-wire'
  | 'charge-battery'
  | 'replace-battery'
  | 'repair-charging'
  | 'take-off-load'
> = {
  // A new lead has new rings, lies where nothing chafes it, and is as long as the old one. The holder is a part of its own.
  'renew-lead': (world, action) => {
    const amp = soundAmp(world);
    if (!amp) return world;
    const { sectionM2 } = action;
    if (action.lead === 'plus')
      return withFuse(world, action, {
        plusLead: { ...amp.plusLead, sectionM2 },
        plusCopper: WHOLE,
        ring: SOUND,
        terminal: CLAMP,
        leadToFrame: OPEN,
      });
    const atLeastM2 = action.noThinnerThan ? amp.plusLead.sectionM2 : 0;
    const groundLead = { ...amp.groundLead, sectionM2: Math.max(sectionM2, atLeastM2) };
    return withAmp(world, { groundLead, groundRing: LUG, minusRing: LUG });
  },
  'renew-holder': (world, fuse) => withFuse(world, fuse, { holder: SOUND }),
  'renew-fuse': (world, action) => {
    switch (action.fuse) {
      case 'main':
        return withFuse(world, action);
      case 'amp-body':
        return withAmp(world, ({ shortInside }) => ({ bodyFuseOpen: shortInside.ohm < SHORTED_OHM }));
      case 'unit':
        return withUnit(world, { fuseOpen: false });
    }
  },
  'tighten-joint': (world, { at }) => {
    switch (at) {
      case 'battery-plus':
        return withSupply(atEachAmp(world, { ring: SOUND }), { bikeRing: SOUND });
      case 'battery-minus':
        return atEachAmp(world, { minusRing: LUG });
      case 'bike-ring':
        return withSupply(world, { bikeRing: SOUND });
      case 'amp-ground':
        return withSupply(withAmp(world, { groundRing: LUG }), ({ sharedScrew: screw }) => ({
          sharedScrew: screw?.holds === 'both' ? { ...screw, joint: SOUND } : screw,
        }));
      case 'amp-terminal':
        return withAmp(world, { terminal: CLAMP });
    }
  },
  // Straight to the negative post, off a screw that it shared: what came in by two grounds at two points is gone.
  'own-ground': (world) => ({
    ...withSupply(withAmp(world, { groundRing: LUG, minusRing: LUG }), ({ sharedScrew }) => ({
      sharedScrew: sharedScrew && { ...sharedScrew, holds: 'unit' },
    })),
    noises: world.noises.filter(({ enters }) => enters !== 'amp-ground'),
  }),
  'move-remote': (world) => withAmp(world, onSwitchedFeed(world)),
  // Its coil hangs on a switched feed of the bike, its contact gives the full volts.
  'fit-remote-relay': (world) => withAmp(world, onSwitchedFeed(world)),
  'wake-by-wire': (world) => withAmp(world, { ...onSwitchedFeed(world), turnOn: 'wire', remoteWire: SOUND }),
  // What is only empty has its inner ohms back when it is full; what is worn keeps them.
  'charge-battery': (world) => {
    const { openV, internalOhm } = sound(world).supply;
    return withSupply(world, (now) => (now.capacityRatio < 1 ? { openV } : { openV, internalOhm }));
  },
  // All rings at its posts come off and go on again. The ripple that a worn one let through is the charging's own again.
  'replace-battery': (world) => {
    const { openV, surfaceV, internalOhm, acceptOhm, capacityRatio, cutOffV } = sound(world).supply;
    return withSupply(atEachAmp(world, { ring: SOUND, minusRing: LUG }), (now) => ({
      openV,
      surfaceV,
      internalOhm,
      acceptOhm,
      capacityRatio,
      cutOffV,
      rippleV: now.capacityRatio * now.rippleV,
      bikeRing: SOUND,
    }));
  },
  'repair-charging': (world) => {
    const { regulatorV, idleA, cruiseA, rippleV } = sound(world).supply;
    return withSupply(world, (now) => ({ regulatorV, idleA, cruiseA, rippleV: rippleV / now.capacityRatio }));
  },
  'take-off-load': (world) => {
    const { baseA, asleepA } = sound(world).supply;
    return withSupply(world, { baseA, asleepA });
  },
};

const onSwitchedFeed = (world: World): Partial<Amp> => ({
  remoteSource: 'switched',
  remoteSourceOhm: soundAmp(world)?.remoteSourceOhm ?? 0,
  remotePin: SOUND,
});
