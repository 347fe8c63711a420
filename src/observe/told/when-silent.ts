import { type Axle, cornersOf } from '../../rig/corner.ts';
import { LOUD_VOLUME, type Moment, type Place, QUIET_VOLUME } from '../../world/moment.ts';
import type { World } from '../../world/state.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { axleOfConcern, ofConcern, playing } from '../bike.ts';
import { pick } from '../draw.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';

/** Of what comes and goes, how often nobody can say when. An estimate. */
const NOBODY_KNOWS_SHARE = 0.2;
/** What is silent at the stand and comes back at times: how often that is called silent always. An estimate. */
const CALLED_ALWAYS_SHARE = 0.5;
/** A joint that a bump moves is moved by the steering, too, where its loom bends with the fork. An estimate. */
const BENDS_WITH_THE_FORK_SHARE = 0.3;
/** Metal that wants cleaning, and water in a case: how often that is told by the weather. An estimate. */
const TOLD_BY_THE_WEATHER_SHARE = 0.4;

type When = 'bumps' | 'wet' | 'hot' | 'steering' | 'running' | 'loud' | 'quiet';

const PLACES: readonly Place[] = ['battery', 'amp-supply', 'amp-inputs', 'rear-run', 'lid', 'fairing', 'unit-plug'];
/** What somebody was doing: a bump moves everything, and a bass beat draws what a full sine draws. */
const DOING = {
  bumps: PLACES.map((place) => ({ moves: [place] })),
  hot: [{ hot: true }],
  steering: [{ moves: ['steering'] }],
  running: [{ engine: 'cruise' }],
  loud: [
    { volumeRatio: LOUD_VOLUME, averageRatio: 1 },
    { volumeRatio: LOUD_VOLUME, averageRatio: 1, engine: 'idle' },
  ],
  quiet: [{ volumeRatio: QUIET_VOLUME }],
} as const satisfies Partial<Record<When, readonly Partial<Moment>[]>>;

/** Metal on the way to a silent axle that water reaches, or water where it should not be. */
const wetTells = (axle: Axle, { runs, amps, about }: World): boolean =>
  cornersOf(axle).some(
    (corner) => runs[corner].dock.wants === 'cleaning' || runs[corner].second.wants === 'cleaning',
  ) || (amps[about ?? -1]?.wet ?? 'no') !== 'no';

/** Whether the rear has lost what a sound bike has at that moment. */
function fails(bike: Ridden, moment: Partial<Moment>): boolean {
  const sound = bike.healthy();
  return ofConcern(bike).some(
    (corner) => playing(sound, corner, moment) === 'plays' && playing(bike, corner, moment) !== 'plays',
  );
}

/** When it is otherwise than at the stand: it fails there and not here, or the other way round. */
function timesOf(bike: Ridden): readonly When[] {
  const atTheStand = fails(bike, {});
  const differs = (moments: readonly Partial<Moment>[]) => moments.some((one) => fails(bike, one) !== atTheStand);
  const times = (Object.keys(DOING) as (keyof typeof DOING)[]).filter((when) => differs(DOING[when]));
  if (!atTheStand) return times;
  // Silent at the stand, and back when it is loud: it is silent when it is quiet. Back with the engine on has no name.
  return times.flatMap((when): When[] => (when === 'loud' ? ['quiet'] : when === 'bumps' ? ['bumps'] : []));
}

export const sayWhenSilent: Say = ({ found, observer }) => {
  if (found.world.rig.rearFitted === 'no' && axleOfConcern(found) === 'rear') return CANNOT;
  const times = timesOf(found);
  const always = fails(found, {});
  const byWeather = happens(observer, TOLD_BY_THE_WEATHER_SHARE);
  if (times.length === 0) return option(always ? 'always' : 'unknown');
  if (always && happens(observer, CALLED_ALWAYS_SHARE)) return option('always');
  if (happens(observer, NOBODY_KNOWS_SHARE)) return option('unknown');
  if (byWeather && wetTells(axleOfConcern(found), found.world)) return option('wet');
  // Of several, people tell the one that they remember.
  const when = pick(observer.draw, times);
  return option(when === 'bumps' && happens(observer, BENDS_WITH_THE_FORK_SHARE) ? bendsOrBumps(found) : when);
};

/** The plug of the head unit is at the fork on many bikes: what opens there opens at full lock. */
const bendsOrBumps = (bike: Ridden): When =>
  fails(bike, { moves: ['unit-plug'] }) === fails(bike, {}) ? 'bumps' : 'steering';
