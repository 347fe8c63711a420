import { withSupply } from '../../../world/faults/kit.ts';
import type { World } from '../../../world/state.ts';
import { between, type Oddity } from '../oddity.ts';
import { type Change, harmless } from './harmless.ts';

/* Batteries that work and read odd. Figures are from memory of the trade, no published source. */

const parts = ({ supply }: World) => [supply];
const battery = (id: string, says: string, change: Change): Oddity => ({
  id,
  says,
  class: 'supply',
  fits: harmless(parts, change),
  bike: change,
});

/** A starter that takes 150 A has to leave 9.6 V; so much colder a battery may get before it does not. */
const [STARTER_A, LEAST_CRANK_V] = [150, 9.65];
const coldestRatio = ({ supply: { openV, internalOhm, bikeRing } }: World) =>
  Math.min(2, ((openV - LEAST_CRANK_V) / STARTER_A - bikeRing.ohm) / internalOhm);
const LEAST_COLD_RATIO = 1.2;

const colder: Change = (world, draw) =>
  withSupply(world, ({ internalOhm }) => ({
    internalOhm: internalOhm * between(draw, LEAST_COLD_RATIO, Math.max(LEAST_COLD_RATIO, coldestRatio(world))),
  }));
const works = harmless(parts, colder);

const HALF_FULL_V = [12.21, 12.34] as const;
const halfFull: Change = (world, draw) => withSupply(world, { openV: between(draw, ...HALF_FULL_V) });
const lasts = harmless(parts, halfFull);

export const SUPPLY: readonly Oddity[] = [
  {
    id: 'battery-half-full',
    says: 'a battery at 12.0 to 12.2 V with the key on',
    class: 'supply',
    fits: (world) => world.supply.openV > HALF_FULL_V[1] && lasts(world),
    bike: halfFull,
  },
  battery('surface-charge', 'a battery fresh off the charger, 12.9 V and more', (world, draw) =>
    withSupply(world, { openV: between(draw, 13.05, 13.25) }),
  ),
  battery('battery-lithium', 'a lithium battery, 13.3 V at rest', (world, draw) =>
    withSupply(world, ({ internalOhm, acceptOhm }) => ({
      openV: between(draw, 13.25, 13.4),
      internalOhm: 0.5 * internalOhm,
      acceptOhm: 0.3 * acceptOhm,
    })),
  ),
  {
    id: 'battery-cold',
    says: 'a cold battery, up to twice its inner ohms',
    class: 'supply',
    fits: (world) => coldestRatio(world) >= LEAST_COLD_RATIO && works(world),
    bike: colder,
  },
];
