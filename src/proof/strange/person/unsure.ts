import { happens, type Observe, type Oddity } from '../oddity.ts';

const UNSURE_SHARE = 1 / 3;

/** “I can’t say” to the same third of the steps, however often they are asked. */
function unsure(observe: Observe, draw: () => number): Observe {
  const sureOf = new Map<string, boolean>();
  return (step, bike, situation) => {
    const sure = sureOf.get(step.id) ?? !happens(draw, UNSURE_SHARE);
    sureOf.set(step.id, sure);
    return sure ? observe(step, bike, situation) : { cannot: true };
  };
}

export const UNSURE: readonly Oddity[] = [
  {
    id: 'never-sure',
    says: 'somebody who is not sure of a third of the steps',
    class: 'unsure',
    fits: () => true,
    person: unsure,
  },
];
