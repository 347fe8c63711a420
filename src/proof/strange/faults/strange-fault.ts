import { stepName } from '../../../steps/subject.ts';
import { historyOf } from '../../../world/faults/history.ts';
import type { Fault } from '../../../world/faults/index.ts';
import { oncePer } from '../../../world/remembered.ts';
import type { History, World } from '../../../world/state.ts';
import { type Ridden, ridden } from '../../../world/symptoms/index.ts';
import type { Observe } from '../oddity.ts';

/** A fault that the model of causes does not have, and the causes whose repair is right for it all the same. */
export interface StrangeFault extends Fault {
  /** Ids of causes. */
  readonly rightCauses: readonly string[];
  /** What of it does not show while somebody works at the bike, or shows as something else. */
  person?(observe: Observe): Observe;
}

/** At these steps the bike shows itself as it would be with a change. */
export function seenAs(steps: readonly string[], so: (world: World) => World): (observe: Observe) => Observe {
  const changed = oncePer((bike: Ridden): Ridden => ridden(so(bike.world)));
  return (observe) => (step, bike, situation) =>
    observe(step, steps.includes(stepName(step)) ? changed(bike) : bike, situation);
}

interface Told {
  readonly before?: Readonly<Record<string, number>>;
  readonly lastChange?: Readonly<Record<string, number>>;
}

/** What is told of any bike, and how much oftener or more rarely with this fault. */
const times = <K extends string>(odds: Readonly<Record<K, number>>, by: Readonly<Record<string, number>> = {}) =>
  Object.fromEntries(
    (Object.entries(odds) as [K, number][]).map(([name, share]) => [name, share * (by[name] ?? 1)]),
  ) as Record<K, number>;

const ofAnyBike = historyOf({ id: '' });

/** The fault with the past that goes with it. */
export function withPast(fault: StrangeFault, { before, lastChange }: Told): StrangeFault {
  const history: History = {
    ...ofAnyBike,
    before: times(ofAnyBike.before, before),
    lastChange: times(ofAnyBike.lastChange, lastChange),
  };
  return { ...fault, apply: (world: World, severity: number) => ({ ...fault.apply(world, severity), history }) };
}
