import { withSettings } from '../../../world/faults/kit.ts';
import { between, type Draw, happens, type Observe, type Oddity, pick } from '../oddity.ts';
import { pointsOf, readsTone } from '../person/places.ts';
import { retyped, saying, typed } from '../person/saying.ts';
import { type Change, harmless } from './harmless.ts';

/* Left and right that are not alike, and never were. */

const aside: Change = (world, draw) =>
  withSettings(world, { balance: between(draw, 0.15, 0.4) * (happens(draw, 0.5) ? 1 : -1) });

/** What one side gives of the other, from a stage on: at the head unit, or only behind the amplifier. */
function weaker(draw: Draw): (observe: Observe) => Observe {
  const ratio = between(draw, 0.6, 0.88);
  const side = pick(draw, ['left', 'right'] as const);
  const fromUnit = happens(draw, 0.5);
  return saying((given) =>
    retyped(given, (name, value, { step, situation }) => {
      const points = pointsOf(step, name, situation);
      if (!readsTone(step) || !name.startsWith(side) || !points) return undefined;
      return fromUnit || points.red.startsWith('amp-out') ? typed(ratio * value, 'V', 3) : undefined;
    }),
  );
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
    fits: ({ rig }) => rig.rearFitted === 'yes',
    person: (observe, draw) => weaker(draw)(observe),
  },
];
