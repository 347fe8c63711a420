import type { Corner } from '../../rig/corner.ts';
import { OPEN } from '../../world/healthy.ts';
import { LOUD_VOLUME } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { ampOf, changed, cornersOfAmp, lampOf } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

/** Only this run plugged in. The others are off: what touches in them does not count. */
const alone = (bike: Ridden, corner: Corner): Ridden =>
  changed(bike, `${corner} alone`, (world) => {
    const others = cornersOfAmp(bike).filter((other) => other !== corner);
    const off = others.map((other) => {
      const run = world.runs[other];
      return [other, { ...run, dock: OPEN, toFrame: OPEN, acrossPair: OPEN }] as const;
    });
    return { ...world, runs: { ...world.runs, ...Object.fromEntries(off) } };
  });

export const sayOneByOne: Say = ({ bike }) => {
  if (ampOf(bike) === null) return CANNOT;
  const trips = (it: Ridden, volumeRatio?: number) =>
    lampOf(it, volumeRatio === undefined ? {} : { volumeRatio }) === 'fault';
  const corners = cornersOfAmp(bike);
  const tripping = corners.filter((corner) => trips(alone(bike, corner)));
  if (tripping.length > 0) return option(tripping.length === corners.length ? 'each' : 'one');
  return option(trips(bike) || trips(bike, LOUD_VOLUME) ? 'together' : 'none');
};
