import { BATTERY_PLUS } from '../../world/bike/nodes.ts';
import { ground, powerSpot } from '../../world/test-points.ts';
import { lookAt, rearAmp } from '../bike.ts';
import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { INPUT } from '../one-volume-step.ts';
import { dcAt, probesAt } from '../probes.ts';

/** Below it no head unit runs, and the step takes no reading. */
const RUNS_FROM_V = 8;

export const sayHalfSupply: Say = ({ bike, observer }) => {
  const look = lookAt(bike, { toneHz: null });
  const pair = rearAmp(bike) === null ? null : probesAt(bike, INPUT, 'rear-left', 'loom');
  if (!look || !pair) return CANNOT;
  const hand = hold(observer);
  const [plusV, minusV] = pair.map((spot) => dcAt(look, [spot, ground(spot.where)]) ?? 0);
  const batteryV = dcAt(look, [powerSpot(BATTERY_PLUS), ground('power')]) ?? 0;
  if (batteryV < RUNS_FROM_V) return CANNOT;
  return {
    readings: {
      batteryV: hand.typed('dc', batteryV),
      plusV: hand.typed('dc', plusV ?? 0),
      minusV: hand.typed('dc', minusV ?? 0),
    },
  };
};
