import { KEY_ON_FLAT_V } from '../../compute/amp-supply.ts';
import { ampGoesOff, ampHistory, ampSigns, keyPositions, whatElse } from '../../steps/amp-history.ts';
import { frontAmpTurnOn, whichAmp } from '../../steps/which-amp.ts';
import { BATTERY_PLUS } from '../../world/bike/nodes.ts';
import { powerV } from '../../world/bike/operate.ts';
import type { Moment } from '../../world/moment.ts';
import { type Ridden, whenAmpGoesOff } from '../../world/symptoms/index.ts';
import { pick } from '../draw.ts';
import { ampIsOn, ampOf, cornersOfAmp, lampOf } from './bike.ts';
import { whenToLook, whileOff } from './left.ts';
import { CANNOT, happens, oneOf, option, type Say, type Says } from './observer.ts';

/* Which amplifier it is, what it did before, and what else is wrong with the bike. */

const ofAmp =
  (say: Say): Say =>
  (asked) =>
    ampOf(asked.bike) === null ? CANNOT : say(asked);

/** More than this in the bike's own ring dims its lamps. An estimate. */
const WEAK_OHM = 0.05;
/** A feed that never comes on is as often a fuse that a socket shares as a wrong tap. An estimate. */
const SHARED_FUSE_SHARE = 0.5;

function weak(bike: Ridden, { moves = [] }: Partial<Moment>): boolean {
  const { now } = bike.at({});
  const { bikeRing } = bike.world.supply;
  const ringOhm = moves.includes('battery') ? (bikeRing.movedOhm ?? bikeRing.ohm) : bikeRing.ohm;
  return !now.ok || powerV(now, BATTERY_PLUS) < KEY_ON_FLAT_V || ringOhm > WEAK_OHM;
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
    if (whenAmpGoesOff(found).length > 0) return option('comes-and-goes');
    return history === 'unknown' ? CANNOT : option(oneOf(observer, history.before));
  }),
  [ampSigns.id]: ofAmp(({ bike }) => option(ampIsOn(bike, whenToLook(bike)) ? 'alive' : 'dead')),
  [ampGoesOff.id]: ofAmp(({ bike, observer }) => {
    const lamp = lampOf(bike, {});
    if (lamp !== 'normal') return lamp === 'fault' ? option('always') : CANNOT;
    const times = whenAmpGoesOff(bike);
    // Of several, people tell the one that they remember.
    return option(times.length > 0 ? pick(observer.draw, times).when : 'stays-on');
  }),
  [whatElse.id]: ofAmp(({ bike, situation, observer }) => {
    const shared = happens(observer, SHARED_FUSE_SHARE);
    const moment = whileOff(bike, situation);
    if (weak(bike, moment)) return option('bike');
    const { now } = bike.at(moment);
    if (!now.ok || !now.unitOn) return option('unit');
    const dead = bike.world.amps[ampOf(bike) ?? -1]?.remoteSource === 'dead';
    return option(dead && shared ? 'accessories' : 'nothing');
  }),
  [keyPositions.id]: ofAmp(({ bike }) => option(ampIsOn(bike, { key: 'accessory' }) ? 'some' : 'none')),
};
