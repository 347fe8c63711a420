import { REMOTE_NOTHING_BELOW_V } from '../../compute/amp-supply.ts';
import { ampDc } from '../../steps/protection.ts';
import type { Answer } from '../../steps/step.ts';
import { ampTerminals, fuseSides, plusPath, supplyUnderLoad } from '../../steps/supply.ts';
import type { TestPoint } from '../../steps/test-points.ts';
import { remoteKeyOff, remoteLamp, remoteSource, remoteStartLamp, remoteVolts, senseDc } from '../../steps/turn-on.ts';
import type { Moment } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { ground, spotOf } from '../../world/test-points.ts';
import { ampOf, cornersOfAmp, lookAt } from './bike.ts';
import { hold } from './hand.ts';
import { whenToLook } from './left.ts';
import { type Asked, CANNOT, option, type Say, type Says } from './observer.ts';
import { dcAt, probesAt } from './probes.ts';

/* DC volts on the way to the amplifier and back, at what switches it on, and at its outputs. */

type Points = readonly [red: TestPoint, black: TestPoint];

/** DC between two places of the amplifier's supply, or null where there is no such place. */
function betweenV(bike: Ridden, moment: Partial<Moment>, points: Points): number | null {
  const [corner] = cornersOfAmp(bike);
  const look = lookAt(bike, moment);
  const probes = corner && probesAt(bike, points, corner);
  return look && probes ? dcAt(look, probes) : null;
}

/** One reading after the other with one meter in one condition. */
function readings(
  { bike, observer }: Asked,
  moment: Partial<Moment>,
  wanted: Readonly<Record<string, Points>>,
): Answer {
  const hand = hold(observer);
  const typed = Object.entries(wanted).map(([name, points]) => {
    const volts = betweenV(bike, moment, points);
    return volts === null ? null : [name, hand.typed('dc', volts)];
  });
  return typed.some((one) => one === null) ? CANNOT : { readings: Object.fromEntries(typed as [string, string][]) };
}
const against = (point: TestPoint): Points => [point, 'battery-minus'];
const reading =
  (wanted: Readonly<Record<string, Points>>, moment: Partial<Moment> = {}): Say =>
  (asked) =>
    readings(asked, { ...whenToLook(asked.bike), ...moment }, wanted);

/** With the bulb on the terminals. A line-level lead is unplugged, or its shield would carry the current. */
const WITH_LAMP = { lamp: true, toneHz: null } as const;
const withLamp =
  (wanted: Readonly<Record<string, Points>>): Say =>
  (asked) => {
    const line = asked.bike.world.amps[ampOf(asked.bike) ?? -1]?.level === 'line';
    const when = { ...whenToLook(asked.bike), ...WITH_LAMP };
    return readings(asked, line ? { ...when, apart: ['amp-inputs'] } : when, wanted);
  };

const lit =
  (point: TestPoint): Say =>
  ({ bike }) => {
    const volts = betweenV(bike, {}, against(point));
    return volts === null ? CANNOT : option(volts >= REMOTE_NOTHING_BELOW_V ? 'lit' : 'dark');
  };

/** Remote terminal and wire: only where there is a wire. */
const byWire =
  (say: Say): Say =>
  (asked) =>
    asked.bike.world.rig.amps[ampOf(asked.bike) ?? -1]?.turnOn === 'wire' ? say(asked) : CANNOT;

export const AMP_VOLTS: Says = {
  [ampTerminals.id]: reading({
    batteryV: against('battery-plus'),
    plusV: against('amp-plus'),
    groundV: against('amp-ground'),
  }),
  [fuseSides.id]: reading({ inV: against('fuse-in'), outV: against('fuse-out') }),
  [supplyUnderLoad.id]: withLamp({
    batteryV: against('battery-plus'),
    ampV: ['amp-plus', 'amp-ground'],
    plusDropV: ['battery-plus', 'amp-plus'],
    groundDropV: against('amp-ground'),
  }),
  [plusPath.id]: withLamp({ ringV: ['battery-plus', 'fuse-in'], holderV: ['fuse-in', 'fuse-out'] }),
  [remoteVolts.id]: byWire(reading({ remoteV: against('amp-remote') })),
  [remoteSource.id]: byWire(reading({ startV: against('remote-start') })),
  [remoteKeyOff.id]: byWire(reading({ remoteV: against('amp-remote') }, { key: 'off', toneHz: null })),
  [remoteLamp.id]: byWire(lit('amp-remote')),
  [remoteStartLamp.id]: byWire(lit('remote-start')),
  [senseDc.id]: ({ bike, observer }) => {
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
  },
  [ampDc.id]: ({ bike, observer }) => {
    const look = lookAt(bike, { toneHz: null, apart: ['amp-outputs'] });
    const volts = cornersOfAmp(bike).map((corner) => {
      const pair = [spotOf('amp-out-plus', bike.world, corner), spotOf('amp-out-minus', bike.world, corner)] as const;
      return look && pair[0] && pair[1] ? Math.abs(dcAt(look, [pair[0], pair[1]]) ?? 0) : 0;
    });
    return volts.length === 0 || !look
      ? CANNOT
      : { readings: { highestV: hold(observer).typed('dc', Math.max(...volts)) } };
  },
};
