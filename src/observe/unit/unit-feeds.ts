import { BATTERY_PLUS, UNIT_GROUND, UNIT_PLUS, UNIT_SWITCHED } from '../../world/bike/nodes.ts';
import { ground, powerSpot } from '../../world/test-points.ts';
import { lookAt } from '../bike.ts';
import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { dcAt } from '../probes.ts';

export const sayUnitFeeds: Say = ({ bike, observer }) => {
  const look = lookAt(bike, { toneHz: null });
  if (!look) return CANNOT;
  const hand = hold(observer);
  const at = (node: string) => hand.typed('dc', dcAt(look, [powerSpot(node), ground('power')]) ?? 0);
  return {
    readings: {
      batteryV: at(BATTERY_PLUS),
      constantV: at(UNIT_PLUS),
      keyV: at(UNIT_SWITCHED),
      groundV: at(UNIT_GROUND),
    },
  };
};
