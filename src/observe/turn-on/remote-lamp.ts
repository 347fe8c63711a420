import { ampOf, isOpen } from '../bike.ts';
import { happens, option, type Say } from '../observer.ts';
import { byWire, lit } from '../remote.ts';

/** How often an open remote wire has come out of the terminal, and is seen hanging there. An estimate. */
const HANGS_OUT_SHARE = 0.25;

export const sayRemoteLamp: Say = byWire((asked) => {
  const wire = asked.bike.world.amps[ampOf(asked.bike) ?? -1]?.remoteWire;
  const hangsOut = wire !== undefined && isOpen(wire) && happens(asked.observer, HANGS_OUT_SHARE);
  return hangsOut ? option('out') : lit('amp-remote')(asked);
});
