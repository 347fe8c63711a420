import { COIL_LOWEST_RATIO } from '../../compute/impedance.ts';
import { CORNERS, type Corner } from '../../rig/corner.ts';
import { COIL_RATIO } from '../healthy.ts';
import { togetherOhm } from '../hear.ts';
import { sound } from '../repair/sound.ts';
import type { Speaker, World } from '../state.ts';
import { driverOf, isFitted } from '../valued-rig.ts';
import type { Harm } from './harm.ts';

/** What a channel of a head unit is made for. Common practice, no published source. */
const UNIT_RATED_OHM = 4;

/** Rated ohms together of the speakers that hang on a channel, if their coils were of the middle of their band. */
const ratedOhm = ({ speakers }: World, corner: Corner): number => togetherOhm(speakers[corner]) / COIL_RATIO;
/** The least that its channel is rated for. A build that hung less on its head unit from the start is taken as it is. */
function leastOhm(world: World, corner: Corner): number {
  const driver = driverOf(world.rig, corner);
  return driver === 'unit'
    ? Math.min(UNIT_RATED_OHM, ratedOhm(sound(world), corner))
    : (world.rig.amps[driver]?.ratedOhm ?? 0);
}

/** What is around a speaker: whoever mends only that hangs no coil on a channel and joins none anew. */
const AROUND: ReadonlySet<string> = new Set<keyof Speaker>(['leakDb', 'bareTweeter']);
const isLeftHanging = (before: Speaker, after: Speaker): boolean =>
  Object.entries(before).every(([part, was]) => AROUND.has(part) || after[part as keyof Speaker] === was);

/** Speakers and what drives them. */
export const LOAD_HARMS: readonly Harm[] = [
  {
    id: 'load-below-rating',
    says: 'A channel has less ohms on it than it is rated for.',
    does: (before, after) =>
      CORNERS.some(
        (corner) =>
          isFitted(after.rig, corner) &&
          !isLeftHanging(before.speakers[corner], after.speakers[corner]) &&
          // A coil of that rating reads no less.
          togetherOhm(after.speakers[corner]) < COIL_LOWEST_RATIO * leastOhm(after, corner),
      ),
  },
];
