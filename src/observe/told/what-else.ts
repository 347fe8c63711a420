import { KEY_ON_FLAT_V } from '../../compute/amp-supply.ts';
import { BATTERY_PLUS } from '../../world/bike/nodes.ts';
import { powerV } from '../../world/bike/operate.ts';
import type { Moment } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { ampOf } from '../bike.ts';
import { whileOff } from '../left.ts';
import { happens, option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';

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

export const sayWhatElse: Say = ofAmp(({ bike, situation, observer }) => {
  const shared = happens(observer, SHARED_FUSE_SHARE);
  const moment = whileOff(bike, situation);
  if (weak(bike, moment)) return option('bike');
  const { now } = bike.at(moment);
  if (!now.ok || !now.unitOn) return option('unit');
  const dead = bike.world.amps[ampOf(bike) ?? -1]?.remoteSource === 'dead';
  return option(dead && shared ? 'accessories' : 'nothing');
});
