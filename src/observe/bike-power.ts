import { KEY_ON_FLAT_V } from '../compute/amp-supply.ts';
import { BATTERY_PLUS } from '../world/bike/nodes.ts';
import { powerV } from '../world/bike/operate.ts';
import type { Ridden } from '../world/symptoms/index.ts';

/** More than this in the bike's own ring dims its lamps. An estimate. */
const WEAK_OHM = 0.05;

/** Whether the lights of the bike are weak, as it stands. `moved` is its battery ring shaken. */
export function isWeak(bike: Ridden, moved = false): boolean {
  const { now } = bike.at({});
  const { bikeRing } = bike.world.supply;
  const ringOhm = moved ? (bikeRing.movedOhm ?? bikeRing.ohm) : bikeRing.ohm;
  return !now.ok || powerV(now, BATTERY_PLUS) < KEY_ON_FLAT_V || ringOhm > WEAK_OHM;
}
