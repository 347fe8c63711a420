import { ampOf } from '../bike.ts';
import { isWeak } from '../bike-power.ts';
import { whileOff } from '../left.ts';
import { happens, option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';

/** A feed that never comes on is as often a fuse that a socket shares as a wrong tap. An estimate. */
const SHARED_FUSE_SHARE = 0.5;

export const sayWhatElse: Say = ofAmp(({ bike, situation, observer }) => {
  const shared = happens(observer, SHARED_FUSE_SHARE);
  const moment = whileOff(bike, situation);
  if (isWeak(bike, moment.moves?.includes('battery'))) return option('bike');
  const { now } = bike.at(moment);
  if (!now.ok || !now.unitOn) return option('unit');
  const dead = bike.world.amps[ampOf(bike) ?? -1]?.remoteSource === 'dead';
  return option(dead && shared ? 'accessories' : 'nothing');
});
