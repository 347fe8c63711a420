import { cornersOf } from '../../../rig/corner.ts';
import { hasRear, withSpeakers } from '../../../world/faults/kit.ts';
import type { World } from '../../../world/state.ts';
import { between, type Oddity } from '../oddity.ts';
import { type Change, harmless } from './harmless.ts';

/* Rear speakers that are not what the papers say. */

const REAR = cornersOf('rear');
const parts = ({ speakers }: World) => REAR.map((corner) => speakers[corner]);
const speakers = (id: string, says: string, has: (world: World) => boolean, change: Change): Oddity => {
  const play = harmless(parts, change);
  return { id, says, class: 'speakers', fits: (world) => hasRear(world) && has(world) && play(world), bike: change };
};

const isSingle = ({ rig }: World): boolean => rig.rearPerChannel === 1;
/** Of a rating between 3.5 and 5 Ω, as built. */
const isFourOhm = ({ rig }: World): boolean => rig.rearRatedOhm > 3.5 && rig.rearRatedOhm < 5;
const THREE_OF_FOUR = 3 / 4;

export const SPEAKERS: readonly Oddity[] = [
  speakers(
    'three-ohm',
    'rear speakers of 3 Ω',
    (world) => isSingle(world) && isFourOhm(world),
    (world) =>
      withSpeakers(
        { ...world, rig: { ...world.rig, rearRatedOhm: THREE_OF_FOUR * world.rig.rearRatedOhm } },
        REAR,
        (one) => ({
          coilOhm: THREE_OF_FOUR * one.coilOhm,
        }),
      ),
  ),
  speakers('two-a-side', 'two rear speakers on each channel where one is expected', isSingle, (world) =>
    withSpeakers(
      {
        ...world,
        rig: {
          ...world.rig,
          rearPerChannel: 2,
          rearWiring: 'parallel',
          rearRatedOhm: 2 * world.rig.rearRatedOhm,
        },
      },
      REAR,
      (one) => ({ count: 2, wiring: 'parallel', coilOhm: 2 * one.coilOhm }),
    ),
  ),
  speakers(
    'coils-warm',
    'coils still warm from loud music, up to half as many ohms again',
    () => true,
    (world, draw) => {
      const warmer = between(draw, 1.15, 1.45);
      return withSpeakers(world, REAR, ({ coilOhm }) => ({ coilOhm: warmer * coilOhm }));
    },
  ),
];
