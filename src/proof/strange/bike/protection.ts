import type { World } from '../../../world/state.ts';
import { ridden } from '../../../world/symptoms/index.ts';
import type { Oddity } from '../oddity.ts';
import { saying, swapped } from '../person/saying.ts';

const protects = (world: World): boolean => {
  const { now } = ridden(world).at({});
  const why = now.ok && world.about !== null ? now.amps[world.about]?.why : null;
  return why === 'short' || why === 'load' || why === 'dc';
};

export const PROTECTION: readonly Oddity[] = [
  {
    id: 'protection-latches',
    says: 'an amplifier whose protection lets go only after minutes without its supply',
    class: 'protection',
    fits: protects,
    person: saying(
      swapped({
        'speakers-unplugged': { clears: 'stays' },
        recover: { 'key-cycle': 'stays' },
        'one-by-one': { one: 'none', together: 'none' },
      }),
    ),
  },
];
