import { perCorner, sideOf } from '../../../rig/corner.ts';
import { hasRear, withSettings, withUnit } from '../../../world/faults/kit.ts';
import type { World } from '../../../world/state.ts';
import { between, type Draw, happens, type Observe, type Oddity, pick } from '../oddity.ts';
import { pointsOf, readsTone } from '../person/places.ts';
import { retyped, saying, typed } from '../person/saying.ts';
import { type Change, harmless } from './harmless.ts';

/* Left and right that are not alike, and never were. */

const aside: Change = (world, draw) =>
  withSettings(world, { balance: between(draw, 0.15, 0.4) * (happens(draw, 0.5) ? 1 : -1) });

/** What one side gives of the other, from the head unit on, or only behind the amplifier. */
const RATIO = [0.6, 0.88] as const;
const FROM_UNIT_SHARE = 0.5;
const aSide = (draw: Draw) => pick(draw, ['left', 'right'] as const);

const weakerUnit: Change = (world, draw) => {
  if (!happens(draw, FROM_UNIT_SHARE)) return world;
  const [ratio, side] = [between(draw, ...RATIO), aSide(draw)];
  return withUnit(world, ({ levelRatio }) => ({
    levelRatio: perCorner((corner) => (sideOf(corner) === side ? ratio : 1) * levelRatio[corner]),
  }));
};

const unitIsEven = ({ unit }: World): boolean => new Set(Object.values(unit.levelRatio)).size === 1;
/** The channels of an amplifier have no level of their own on the bike: what they give shows in readings only. */
function weakerAmp(observe: Observe, draw: Draw): Observe {
  const [ratio, side] = [between(draw, ...RATIO), aSide(draw)];
  return saying((given) =>
    retyped(given, (name, value, { step, situation, bike }) => {
      const points = pointsOf(step, name, situation);
      if (!unitIsEven(bike.world) || !readsTone(step) || !name.startsWith(side)) return undefined;
      return points?.red.startsWith('amp-out') ? typed(ratio * value, 'V', 3) : undefined;
    }),
  )(observe);
}

export const SIDES: readonly Oddity[] = [
  {
    id: 'balance-aside',
    says: 'a balance that somebody likes a little to one side',
    class: 'sides',
    fits: harmless(({ settings }) => [settings], aside),
    bike: aside,
  },
  {
    id: 'sides-unequal',
    says: 'one side that gives 0.6 to 0.9 of the other',
    class: 'sides',
    fits: hasRear,
    bike: weakerUnit,
    person: weakerAmp,
  },
];
