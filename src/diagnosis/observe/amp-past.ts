import { KEY_ON_FLAT_V } from '../../compute/amp-supply.ts';
import { ampGoesOff, ampHistory, ampSigns, keyPositions, whatElse } from '../../steps/amp-history.ts';
import { frontAmpTurnOn, whichAmp } from '../../steps/which-amp.ts';
import { BATTERY_PLUS } from '../../world/bike/nodes.ts';
import { powerV } from '../../world/bike/operate.ts';
import { LOUD_VOLUME, type Moment, type Place, QUIET_VOLUME } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { ampIsOn, ampOf, cornersOfAmp, lampOf } from './bike.ts';
import { whenToLook } from './left.ts';
import { CANNOT, happens, oneOf, option, type Say, type Says } from './observer.ts';

/* Which amplifier it is, what it did before, and what else is wrong with the bike. */

const ofAmp =
  (say: Say): Say =>
  (asked) =>
    ampOf(asked.bike) === null ? CANNOT : say(asked);

const BUMPS: readonly Place[] = ['battery', 'amp-supply', 'amp-inputs', 'rear-run', 'lid', 'unit-plug', 'steering'];
/** What was going on the last three times that it went off, the first that does it. */
const TRIALS = {
  bumps: BUMPS.map((place) => ({ moves: [place] })),
  loud: [{ volumeRatio: LOUD_VOLUME }],
  hot: [{ hot: true }],
  quiet: [{ volumeRatio: QUIET_VOLUME }],
} as const satisfies Record<string, readonly Partial<Moment>[]>;

/** More than this in the bike's own ring dims its lamps. An estimate. */
const WEAK_OHM = 0.05;
/** A feed that never comes on is as often a fuse that a socket shares as a wrong tap. An estimate. */
const SHARED_FUSE_SHARE = 0.5;

function weak(bike: Ridden): boolean {
  const { now } = bike.at({});
  return !now.ok || powerV(now, BATTERY_PLUS) < KEY_ON_FLAT_V || bike.world.supply.bikeRing.ohm > WEAK_OHM;
}

export const AMP_PAST: Says = {
  [whichAmp.id]: ofAmp(({ bike }) =>
    option(cornersOfAmp(bike).some((corner) => corner.startsWith('rear')) ? 'rear' : 'front'),
  ),
  [frontAmpTurnOn.id]: ({ step, bike }) => {
    const known = step.kind === 'rig' ? step.known(bike.world.rig) : undefined;
    return known === undefined ? CANNOT : option(known);
  },
  [ampHistory.id]: ofAmp(({ found, observer }) => {
    const { history } = found.world;
    return history === 'unknown' ? CANNOT : option(oneOf(observer, history.before));
  }),
  [ampSigns.id]: ofAmp(({ bike }) => option(ampIsOn(bike, whenToLook(bike)) ? 'alive' : 'dead')),
  [ampGoesOff.id]: ofAmp(({ bike }) => {
    const lamp = lampOf(bike, {});
    if (lamp !== 'normal') return lamp === 'fault' ? option('always') : CANNOT;
    const when = (Object.keys(TRIALS) as (keyof typeof TRIALS)[]).find((name) =>
      TRIALS[name].some((moment) => !ampIsOn(bike, moment) && ampIsOn(bike.healthy(), moment)),
    );
    return option(when ?? 'stays-on');
  }),
  [whatElse.id]: ofAmp(({ bike, observer }) => {
    const shared = happens(observer, SHARED_FUSE_SHARE);
    if (weak(bike)) return option('bike');
    const { now } = bike.at({});
    if (!now.ok || !now.unitOn) return option('unit');
    const dead = bike.world.amps[ampOf(bike) ?? -1]?.remoteSource === 'dead';
    return option(dead && shared ? 'accessories' : 'nothing');
  }),
  [keyPositions.id]: ofAmp(({ bike }) => option(ampIsOn(bike, { key: 'accessory' }) ? 'some' : 'none')),
};
