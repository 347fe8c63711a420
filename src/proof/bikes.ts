import type { Rig } from '../rig/rig.ts';
import { type Fault, keyOf, withFaults } from '../world/faults/index.ts';
import { healthyWorld } from '../world/healthy.ts';
import type { World } from '../world/state.ts';
import { COMPLAINTS, type ComplaintId, type Ridden, ridden } from '../world/symptoms/index.ts';

/** One fault that a bike has, and how bad it is. */
export interface Present {
  readonly fault: Fault;
  readonly severity: number;
}

/** The true bikes of one build: whole, and with faults. Each is worked out once, whoever looks at it. */
export interface Bikes {
  readonly rig: Rig;
  readonly healthy: World;
  with(faults: readonly Present[]): Ridden;
  complains(flow: ComplaintId, faults: readonly Present[]): boolean;
}

/** `about` is the amplifier that the case is about, where it is not the one that callers mean. */
export function bikesOf(rig: Rig, about?: number): Bikes {
  const sound = healthyWorld(rig);
  const healthy = about === undefined ? sound : { ...sound, about };
  const known = new Map<string, Ridden>();
  const withFaultsOn = (faults: readonly Present[]): Ridden => {
    const key = faults.map(({ fault, severity }) => `${keyOf(fault)} ${severity}`).join(', ');
    const before = known.get(key);
    if (before) return before;
    const made = ridden(
      withFaults(
        healthy,
        faults.map(({ fault, severity }) => [fault, severity] as const),
      ),
    );
    known.set(key, made);
    return made;
  };
  return {
    rig,
    healthy,
    with: withFaultsOn,
    complains: (flow, faults) => COMPLAINTS[flow](withFaultsOn(faults)) === 'yes',
  };
}
