import { CORNERS, type Corner, cornersOf } from '../rig/corner.ts';
import { silentSpeaker } from '../steps/runs/silent-speaker.ts';
import type { Moment, Place, Plug } from '../world/moment.ts';
import type { Speaker } from '../world/state.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { ground } from '../world/test-points.ts';
import { axleOfConcern, changed, lookAt } from './bike.ts';
import type { Asked } from './observer.ts';
import { ohmsAt, type Probes, probesAt } from './probes.ts';

/* Readings in ohms: key off, plug apart, nothing that plays. */

const RUN = ['run-plus', 'run-minus'] as const;

export const dead = (apart: readonly Plug[], moves: readonly Place[] = []): Partial<Moment> => ({
  key: 'off',
  toneHz: null,
  apart,
  moves,
});

export function ohmsOf(bike: Ridden, moment: Partial<Moment>, probes: Probes | null): number | null {
  const look = lookAt(bike, moment);
  return look && probes ? ohmsAt(look, probes) : null;
}

export const runOf = (bike: Ridden, corner: Corner) => ohmsOf(bike, dead(['runs']), probesAt(bike, RUN, corner));

/** How far a run reads from what it reads on a sound bike, either way. */
function offHealthy(bike: Ridden, corner: Corner): number {
  const [ohm, soundOhm] = [runOf(bike, corner) ?? 0, runOf(bike.healthy(), corner) ?? 0];
  return Math.abs(Math.log(Math.max(ohm, LEAST_OHM) / Math.max(soundOhm, LEAST_OHM)));
}
const LEAST_OHM = 1e-3;

/** The corner of the silent axle whose run is furthest from healthy: the one that is looked into. */
const silentOf = (bike: Ridden): Corner =>
  cornersOf(axleOfConcern(bike)).reduce((worst, corner) =>
    offHealthy(bike, corner) > offHealthy(bike, worst) ? corner : worst,
  );

/** The speaker that a step is about: its own, or the one that the answers call silent, else the one that a look finds. */
export function cornerAsked({ step, bike, situation }: Asked): Corner {
  const subject = step.about?.subject;
  return CORNERS.find((corner) => corner === subject) ?? silentSpeaker(situation) ?? silentOf(bike);
}

/** One speaker with a wire off: its neighbours on the same channel are not seen. */
export const oneSpeaker = (bike: Ridden, corner: Corner): Ridden =>
  changed(bike, `one speaker ${corner}`, (world) => {
    const alone: Speaker = { ...world.speakers[corner], count: 1, wiring: 'single' };
    return world.speakers[corner].count === 1 ? world : { ...world, speakers: { ...world.speakers, [corner]: alone } };
  });

/** What is moved while the meter looks for a wire that touches. */
const MOVED: readonly (readonly Place[])[] = [[], ['lid', 'rear-run', 'fairing', 'steering']];

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
