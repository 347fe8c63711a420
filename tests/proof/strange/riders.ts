import { expect } from 'vitest';
import { type Observe, ODDITIES, type Oddity, oddRider } from '../../../src/proof/strange/index.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import type { Answer } from '../../../src/steps/step.ts';
import { eachOf } from '../../../src/steps/subject.ts';
import { FAULTS, keyOf, severityAt } from '../../../src/world/faults/index.ts';
import { healthyWorld } from '../../../src/world/healthy.ts';
import { type Ridden, ridden } from '../../../src/world/symptoms/index.ts';
import { careful, STEPS } from './bikes.ts';

/* One bike, what it can have, and one odd person at it. */

/** Two amplifiers; that of the rear is switched by a remote wire. */
const [FRONT_AMP, REAR_AMP] = EXAMPLE_RIGS.trunk.amps;
const RIG: Rig = { ...EXAMPLE_RIGS.trunk, amps: [FRONT_AMP, { ...REAR_AMP, turnOn: 'wire' }] };
export function bikeWith(key: string): Ridden {
  const fault = FAULTS.find((one) => keyOf(one) === key) ?? expect.fail(`no fault ${key}`);
  return ridden(fault.apply(healthyWorld(RIG), severityAt(fault, 0.5)));
}
export const SOUND = ridden(healthyWorld(RIG));

export const oddity = (id: string): Oddity => ODDITIES.find((one) => one.id === id) ?? expect.fail(`no oddity ${id}`);
export const rider = (id: string, seed = 'rider'): Observe => oddRider(careful, [oddity(id)], seed);
function says(sees: Observe, step: string, bike: Ridden): Answer {
  const found = STEPS.flatMap(eachOf).find(({ id }) => id === step) ?? expect.fail(`no step ${step}`);
  return sees(found, bike, { rig: bike.world.rig, facts: {} });
}
export const optionOf = (sees: Observe, step: string, bike: Ridden) => {
  const answer = says(sees, step, bike);
  return 'option' in answer ? answer.option : 'cannot' in answer ? 'cannot' : expect.fail(`${step} is a reading`);
};
export const readingsOf = (sees: Observe, step: string, bike: Ridden) => {
  const answer = says(sees, step, bike);
  return 'readings' in answer ? answer.readings : expect.fail(`${step} gave no reading`);
};
export const numbers = (readings: Readonly<Record<string, string>>) =>
  Object.values(readings).map((text) => Number.parseFloat(text));
