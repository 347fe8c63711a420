import { REMOTE_NOTHING_BELOW_V } from '../compute/amp-supply.ts';
import type { TestPoint } from '../steps/test-points.ts';
import { ampOf } from './bike.ts';
import { against, betweenV } from './dc-volts.ts';
import { CANNOT, option, type Say } from './observer.ts';

export const lit =
  (point: TestPoint): Say =>
  ({ bike }) => {
    const volts = betweenV(bike, {}, against(point));
    return volts === null ? CANNOT : option(volts >= REMOTE_NOTHING_BELOW_V ? 'lit' : 'dark');
  };

/** Remote terminal and wire: only where there is a wire. */
export const byWire =
  (say: Say): Say =>
  (asked) =>
    asked.bike.world.rig.amps[ampOf(asked.bike) ?? -1]?.turnOn === 'wire' ? say(asked) : CANNOT;
