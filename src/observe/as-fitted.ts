import { rearAmp } from './bike.ts';
import { type Asked, CANNOT, option } from './observer.ts';

export function asFitted({ step, bike }: Asked) {
  const known = step.kind === 'rig' ? step.known(bike.world.rig) : undefined;
  return known === undefined ? CANNOT : option(known);
}

export const ofTheRearAmp = (asked: Asked) => (rearAmp(asked.bike) === null ? CANNOT : asFitted(asked));
