import type { Corner } from '../../rig/corner.ts';
import { coilOhms, OPEN_RATIO, runOhms, runSplit, wireToFrame } from '../../steps/ohms.ts';
import { dockBike, dockLid } from '../../world/bike/nodes.ts';
import type { Moment, Place, Plug } from '../../world/moment.ts';
import type { Speaker } from '../../world/state.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { ground } from '../../world/test-points.ts';
import { driverOf } from '../../world/valued-rig.ts';
import { changed, lookAt, REAR } from './bike.ts';
import { hold } from './hand.ts';
import { CANNOT, option, type Says } from './observer.ts';
import { ohmsAt, type Probes, probesAt } from './probes.ts';

/* Readings in ohms: key off, plug apart, nothing that plays. */

const RUN = ['run-plus', 'run-minus'] as const;
const TABS = ['speaker-plus', 'speaker-minus'] as const;

const dead = (apart: readonly Plug[], moves: readonly Place[] = []): Partial<Moment> => ({
  key: 'off',
  toneHz: null,
  apart,
  moves,
});

function ohmsOf(bike: Ridden, moment: Partial<Moment>, probes: Probes | null): number | null {
  const look = lookAt(bike, moment);
  return look && probes ? ohmsAt(look, probes) : null;
}
export const runOf = (bike: Ridden, corner: Corner) => ohmsOf(bike, dead(['runs']), probesAt(bike, RUN, corner));

/** The rear corner whose run shows the most: the silent one, which is looked into. */
export const silentRear = (bike: Ridden): Corner =>
  REAR.reduce((worst, corner) => ((runOf(bike, corner) ?? 0) > (runOf(bike, worst) ?? 0) ? corner : worst));

/** One speaker with a wire off: its neighbours on the same channel are not seen. */
export const oneSpeaker = (bike: Ridden, corner: Corner): Ridden =>
  changed(bike, `one speaker ${corner}`, (world) => {
    const alone: Speaker = { ...world.speakers[corner], count: 1, wiring: 'single' };
    return world.speakers[corner].count === 1 ? world : { ...world, speakers: { ...world.speakers, [corner]: alone } };
  });

/** What is moved while the meter looks for a wire that touches. */
const MOVED: readonly (readonly Place[])[] = [[], ['lid', 'rear-run', 'steering']];

/** The lowest ohms from any wire of these runs to the frame, while lids and leads are moved. */
export function lowestToFrame(bike: Ridden, corners: readonly Corner[]): number | null {
  const all = corners.flatMap((corner) =>
    RUN.flatMap((point) =>
      MOVED.map((moves) => {
        const [wire] = probesAt(bike, [point, point], corner) ?? [];
        return ohmsOf(bike, dead(['runs'], moves), wire ? [wire, ground(wire.where)] : null);
      }),
    ),
  );
  const read = all.filter((ohm) => ohm !== null);
  return read.length === 0 ? null : Math.min(...read);
}

export const OHMS: Says = {
  [runOhms.id]: ({ bike, observer }) => {
    const [left, right] = REAR.map((corner) => runOf(bike, corner));
    if (left == null || right == null) return CANNOT;
    const hand = hold(observer);
    const { leadsOhm } = observer.meter;
    const typed = (ohm: number) => hand.typed('ohm', ohm + leadsOhm);
    return { readings: { leadsOhm: typed(0), leftOhm: typed(left), rightOhm: typed(right) } };
  },
  [coilOhms.id]: ({ bike, observer }) => {
    const corner = silentRear(bike);
    const alone = oneSpeaker(bike, corner);
    const ohm = ohmsOf(alone, dead(['tabs']), probesAt(alone, TABS, corner));
    if (ohm === null) return CANNOT;
    const hand = hold(observer);
    const { leadsOhm } = observer.meter;
    return { readings: { leadsOhm: hand.typed('ohm', leadsOhm), coilOhm: hand.typed('ohm', ohm + leadsOhm) } };
  },
  [wireToFrame.id]: ({ bike, observer }) => {
    const ohm = lowestToFrame(bike, REAR);
    if (ohm === null) return CANNOT;
    return { readings: { lowestOhm: hold(observer).typed('ohm', ohm + observer.meter.leadsOhm) } };
  },
  [runSplit.id]: ({ bike }) => {
    if (bike.world.rig.rearFitted === 'no') return CANNOT;
    const corner = silentRear(bike);
    const where = driverOf(bike.world.rig, corner);
    const spot = (node: string) => ({ where, node, corner });
    const seen = (at: typeof dockLid, apart: readonly Plug[]) => {
      const ohm = ohmsOf(bike, dead(apart), [spot(at(corner, '+')), spot(at(corner, '−'))]);
      return ohm !== null && ohm < OPEN_RATIO * bike.world.rig.rearRatedOhm;
    };
    if (!seen(dockLid, ['runs', 'dock'])) return option('lid-side');
    return option(seen(dockBike, ['runs']) ? 'bike-side' : 'contacts');
  },
};
