import { cornersOf } from '../../../rig/corner.ts';
import { hasAmp, hasRear, withAmp, withRuns } from '../../../world/faults/kit.ts';
import type { World } from '../../../world/state.ts';
import { between, type Draw, type Oddity, pick } from '../oddity.ts';
import { type Change, harmless } from './harmless.ts';

/* A second imperfection that does no harm, and that a meter finds all the same. */

const ofAmp = ({ amps, about }: World) =>
  amps.flatMap(({ ring, holder, groundRing, minusRing }, i) =>
    i === about ? [ring, holder, groundRing, minusRing] : [],
  );
const ofRuns = ({ runs }: World) => cornersOf('rear').flatMap((corner) => [runs[corner].dock, runs[corner].toFrame]);

const contact = (
  id: string,
  says: string,
  has: (world: World) => boolean,
  parts: (world: World) => readonly object[],
  change: Change,
): Oddity => {
  const lives = harmless(parts, change);
  return { id, says, class: 'contacts', fits: (world) => has(world) && lives(world), bike: change };
};

/** A bulb of 5 A loses about 0.1 V there. */
const lossyOhm = (draw: Draw): number => between(draw, 0.01, 0.022);
/** From 300 Ω to 100 kΩ, each power of ten as likely as the next. */
const dampOhm = (draw: Draw): number => 10 ** between(draw, 2.5, 5);

export const CONTACTS: readonly Oddity[] = [
  contact(
    'joint-lossy',
    'a joint of the supply that loses 0.1 V under a bulb, and works',
    hasAmp,
    ofAmp,
    (world, draw) => {
      const where = pick(draw, ['ring', 'holder', 'groundRing', 'minusRing'] as const);
      return withAmp(world, { [where]: { ohm: lossyOhm(draw) } });
    },
  ),
  contact('dock-filmed', 'a film of some tenths of an ohm at a rear plug', hasRear, ofRuns, (world, draw) =>
    withRuns(world, cornersOf('rear'), { dock: { ohm: between(draw, 0.2, 0.45) } }),
  ),
  contact('damp-to-frame', 'damp between a rear wire and the frame', hasRear, ofRuns, (world, draw) =>
    withRuns(world, [pick(draw, cornersOf('rear'))], { toFrame: { ohm: dampOhm(draw) } }),
  ),
];
