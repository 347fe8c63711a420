import type { Answer } from '../steps/step.ts';
import type { TestPoint } from '../steps/test-points.ts';
import type { Moment } from '../world/moment.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { ampOf, cornersOfAmp, lookAt } from './bike.ts';
import { hold } from './hand.ts';
import { whenToLook } from './left.ts';
import { type Asked, CANNOT, type Say } from './observer.ts';
import { dcAt, probesAt } from './probes.ts';

type Points = readonly [red: TestPoint, black: TestPoint];

/** DC between two places of the amplifier's supply, or null where there is no such place. */
export function betweenV(bike: Ridden, moment: Partial<Moment>, points: Points): number | null {
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

export const against = (point: TestPoint): Points => [point, 'battery-minus'];

export const reading =
  (wanted: Readonly<Record<string, Points>>, moment: Partial<Moment> = {}): Say =>
  (asked) =>
    readings(asked, { ...whenToLook(asked.bike), ...moment }, wanted);

/** With the bulb on the terminals. A line-level lead is unplugged, or its shield would carry the current. */
const WITH_LAMP = { lamp: true, toneHz: null } as const;

export const withLamp =
  (wanted: Readonly<Record<string, Points>>): Say =>
  (asked) => {
    const line = asked.bike.world.amps[ampOf(asked.bike) ?? -1]?.level === 'line';
    const when = { ...whenToLook(asked.bike), ...WITH_LAMP };
    return readings(asked, line ? { ...when, apart: ['amp-inputs'] } : when, wanted);
  };
