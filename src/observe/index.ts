import { basename } from 'node:path';
import { modulesBelow } from '../compute/modules-below.ts';
import { isOfAnAmp } from '../steps/fitted/of-each-amp.ts';
import type { Answer, Situation, Step } from '../steps/step.ts';
import { stepName } from '../steps/subject.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { changed } from './bike.ts';
import { asLeft } from './left.ts';
import { CANNOT, type Observer, type Say } from './observer.ts';

export type { Observer } from './observer.ts';

/** What is said to every step that a bike can answer, by its name, which is that of the file. */
const SAYS: ReadonlyMap<string, Say> = new Map(
  (await modulesBelow(import.meta.url)).flatMap(([file, exported]) =>
    Object.keys(exported)
      .filter((name) => name.startsWith('say'))
      .map((name) => [basename(file, '.ts'), exported[name] as Say] as const),
  ),
);

/** The bike with the amplifier in question that a step names; null where it has no such amplifier. */
export function meaning(step: Step, bike: Ridden): Ridden | null {
  const pair = (['rear', 'front'] as const).find((one) => one === step.about?.subject);
  if (!pair || !isOfAnAmp(stepName(step))) return bike;
  // One that drives everything counts as the rear’s.
  const at = bike.world.rig.amps.findIndex(({ drives }) => (drives === 'front') === (pair === 'front'));
  return at < 0
    ? null
    : changed(bike, `about ${pair}`, (world) => (world.about === at ? world : { ...world, about: at }));
}

/** The steps that a bike can answer. */
export const OBSERVED: readonly string[] = [...SAYS.keys()];

/**
 * The raw answer of a careful person at this bike, in the condition that the step asks for: what ears, eyes and the meter
 * tell, or `cannot` where the bike has no such thing or no reading that can be used. `situation` is what is believed and
 * was answered so far; what is true is `bike.world`, its rig included. No fault is known here, only the bike.
 * @throws {RangeError} if no bike can answer the step.
 */
export function observe(step: Step, bike: Ridden, situation: Situation, observer: Observer): Answer {
  const say = SAYS.get(stepName(step));
  if (!say) throw new RangeError(`step must be one that a bike can answer, got ${step.id}`);
  const found = meaning(step, bike);
  return found ? say({ step, found, bike: asLeft(found, situation), situation, observer }) : CANNOT;
}
