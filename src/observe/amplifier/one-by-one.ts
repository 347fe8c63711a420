import type { Corner } from '../../rig/corner.ts';
import { LOUD_VOLUME } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { ampOf, changed, cornersOfAmp, lampOf } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { unplugged } from '../unplugged.ts';

/** Only this run plugged in. */
const alone = (bike: Ridden, corner: Corner): Ridden =>
  changed(bike, `${corner} alone`, (world) =>
    unplugged(
      world,
      cornersOfAmp(bike).filter((other) => other !== corner),
    ),
  );

export const sayOneByOne: Say = ({ bike }) => {
  if (ampOf(bike) === null) return CANNOT;
  const trips = (it: Ridden, volumeRatio?: number) =>
    lampOf(it, volumeRatio === undefined ? {} : { volumeRatio }) === 'fault';
  const corners = cornersOfAmp(bike);
  const tripping = corners.filter((corner) => trips(alone(bike, corner)));
  if (tripping.length > 0) return option(tripping.length === corners.length ? 'each' : 'one');
  return option(trips(bike) || trips(bike, LOUD_VOLUME) ? 'together' : 'none');
};
