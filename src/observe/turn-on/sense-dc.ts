import { ground } from '../../world/test-points.ts';
import { cornersOfAmp, lookAt } from '../bike.ts';
import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { dcAt, probesAt } from '../probes.ts';

export const saySenseDc: Say = ({ bike, observer }) => {
  const look = lookAt(bike, { toneHz: null });
  const pairs = cornersOfAmp(bike).map((corner) => {
    const pair = probesAt(bike, ['amp-in-plus', 'amp-in-minus'], corner);
    return look && pair ? pair.map((spot) => dcAt(look, [spot, ground(spot.where)]) ?? 0) : null;
  });
  // The other side only if the first pair reads nothing.
  const read = pairs.filter((pair) => pair !== null);
  const [plusV, minusV] = read.find((pair) => Math.max(...pair) > 1) ?? read[0] ?? [];
  if (plusV === undefined || minusV === undefined) return CANNOT;
  const hand = hold(observer);
  return { readings: { plusV: hand.typed('dc', plusV), minusV: hand.typed('dc', minusV) } };
};
