import type { Corner } from '../rig/corner.ts';
import type { TestPoint } from '../steps/test-points.ts';
import { bandRatio, type Meter } from '../world/meter.ts';
import type { Moment } from '../world/moment.ts';
import { acV, dcV, type Look, ohms, type Read } from '../world/probe.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { type Spot, spotOf } from '../world/test-points.ts';
import { lookAt } from './bike.ts';

/** Two places for the probes of a meter. */
export type Probes = readonly [red: Spot, black: Spot];

type Points = readonly [red: TestPoint, black: TestPoint];

/** The two wires of a pair on this bike, or null where it has no such pair. */
export function probesAt(bike: Ridden, [red, black]: Points, corner: Corner, at?: 'device' | 'loom'): Probes | null {
  const [plus, minus] = [spotOf(red, bike.world, corner, at), spotOf(black, bike.world, corner, at)];
  return plus && minus ? [plus, minus] : null;
}

const numberIn = (read: Read): number | null => (read.ok ? read.value : null);

/** AC volts as a meter with this band meets them. Without a supply there is nothing to meet. */
export function acAt(bike: Ridden, moment: Partial<Moment>, [red, black]: Probes, meter: Meter): number {
  const look = lookAt(bike, moment);
  if (!look) return 0;
  const volts = numberIn(acV(look, red, black)) ?? 0;
  return look.moment.toneHz === null ? volts : volts * bandRatio(meter, look.moment.toneHz);
}

export const dcAt = (look: Look, [red, black]: Probes): number | null => numberIn(dcV(look, red, black));

export const ohmsAt = (look: Look, [red, black]: Probes): number | null => numberIn(ohms(look, red, black));
