import { gainTargetV } from '../compute/gain.ts';
import { withUnit } from './change.ts';
import { loudestInputV, shapeOf } from './healthy.ts';
import type { World } from './state.ts';

/** What a factory head unit may have stored: the rear channels, and the shape of all of them. */
export const STORED = ['unaltered', 'rear-on', 'amplified-same', 'amplified-changes'] as const;
export type Stored = (typeof STORED)[number];

export const isLowered = (stored: Stored): boolean => stored.startsWith('amplified');

/** The bike with another profile stored. Nothing else is touched: a gain stays where it was set. */
export const withStored = (world: World, stored: Stored): World =>
  withUnit(world, {
    rearOn: stored !== 'unaltered',
    profile: shapeOf(world.rig, stored === 'rear-on' ? 'unaltered' : stored),
  });

/** The bike with every gain set to what comes in now, as somebody does after a visit. */
export const withGainsSet = (world: World): World => ({
  ...world,
  amps: world.amps.map((amp, i) => {
    const made = world.rig.amps[i];
    if (!made) return amp;
    const gain =
      gainTargetV({ powerW: made.powerW, loadOhm: made.ratedOhm }) / loudestInputV(world.rig, world.unit.profile);
    return { ...amp, gainRatio: { front: gain, rear: gain } };
  }),
});

type Odds = Readonly<Partial<Record<Stored, number>>>;

/**
 * What a bike is delivered with. A bike built with an amplifier may have either kind of amplified profile, or none. Common
 * practice, no published source; the shares are judged.
 */
export function deliveredOdds({ deliveredWith, deliveredAmp }: World['rig']): Odds {
  const full: Stored = deliveredWith === 'four' ? 'rear-on' : 'unaltered';
  return deliveredAmp === 'yes' ? { 'amplified-same': 4, 'amplified-changes': 3, [full]: 3 } : { [full]: 1 };
}

/** What somebody selects later. Judged, after what callers have: unaltered comes back by itself with a swapped unit. */
export const SELECTED_LATER: Odds = { unaltered: 1, 'rear-on': 4, 'amplified-same': 4, 'amplified-changes': 3 };
