import { readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Draw, drawFrom, pick } from '../../../src/observe/draw.ts';
import { OBSERVED, observe } from '../../../src/observe/index.ts';
import { type Observe, STRANGE_FAULTS, strangeRig, strangeSeverity } from '../../../src/proof/strange/index.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import type { Answer, Step } from '../../../src/steps/step.ts';
import { asBuilt, randomRig } from '../../../src/survey/random-rig.ts';
import { FAULTS } from '../../../src/world/faults/index.ts';
import { healthyWorld } from '../../../src/world/healthy.ts';
import { GOOD_METER } from '../../../src/world/meter.ts';
import type { World } from '../../../src/world/state.ts';
import type { Ridden } from '../../../src/world/symptoms/index.ts';

/* Random bikes, half of them strange ones, and a careful person who answers every step at them. */

const isStep = (value: unknown): value is Step =>
  typeof value === 'object' && value !== null && 'id' in value && 'outcomes' in value && 'kind' in value;

const modules = readdirSync('src/steps', { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => name.endsWith('.ts'))
  .map(
    (name) =>
      import(/* @vite-ignore */ pathToFileURL(resolve('src/steps', name)).href) as Promise<Record<string, unknown>>,
  );
const all = (await Promise.all(modules)).flatMap((module) => Object.values(module).filter(isStep));

/** Every step that a bike can answer, once. */
export const STEPS: readonly Step[] = [...new Map(all.map((step) => [step.id, step])).values()].filter(({ id }) =>
  OBSERVED.includes(id),
);

export function rigOf(i: number): Rig {
  const draw = drawFrom('strange bikes', i);
  return asBuilt(draw, i % 2 === 0 ? strangeRig(draw) : randomRig(draw));
}
export const soundWorld = (i: number): World => healthyWorld(rigOf(i));

const ABOUT = ['no-rear-sound', 'rear-weak', 'one-speaker-or-side-dead', 'amp-wont-turn-on', 'cuts-out'] as const;
export const FAULTS_OF_THE_FLOWS = [...FAULTS, ...STRANGE_FAULTS].filter(({ weights }) =>
  ABOUT.some((complaint) => weights[complaint]),
);

/** The bike with one of the faults that it can have. */
export function faultyWorld(i: number, draw: Draw): World {
  const sound = soundWorld(i);
  const fault = pick(
    draw,
    FAULTS_OF_THE_FLOWS.filter((one) => one.fits(sound)),
  );
  return fault.apply(sound, strangeSeverity(draw, fault));
}

export const careful: Observe = (step, bike, situation) =>
  observe(step, bike, situation, { meter: GOOD_METER, draw: drawFrom('careful', step.id) });

/** What is said to each step, as if it were the only one. */
export const saidBy = (sees: Observe, bike: Ridden): ReadonlyMap<string, Answer> =>
  new Map(STEPS.map((step) => [step.id, sees(step, bike, { rig: bike.world.rig, facts: {} })]));
