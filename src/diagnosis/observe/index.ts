import type { Answer, Situation, Step } from '../../steps/step.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { AMP_PAST } from './amp-past.ts';
import { AMP_VOLTS } from './amp-volts.ts';
import { BUILD } from './build.ts';
import { BY_EAR } from './by-ear.ts';
import { BY_EYE } from './by-eye.ts';
import { FUSE } from './fuse.ts';
import { HISTORY } from './history.ts';
import { asLeft } from './left.ts';
import type { Observer, Says } from './observer.ts';
import { OHMS } from './ohms.ts';
import { PROTECTION } from './protection.ts';
import { SWAPS } from './swaps.ts';
import { TONES } from './tones.ts';
import { TURN_ON } from './turn-on.ts';
import { VOLTS } from './volts.ts';
import { WIGGLE } from './wiggle.ts';

export type { Observer } from './observer.ts';

const SAYS: Says = {
  ...BUILD,
  ...HISTORY,
  ...BY_EAR,
  ...BY_EYE,
  ...WIGGLE,
  ...VOLTS,
  ...TONES,
  ...OHMS,
  ...SWAPS,
  ...AMP_PAST,
  ...AMP_VOLTS,
  ...FUSE,
  ...PROTECTION,
  ...TURN_ON,
};

/** The steps that a bike can answer. */
export const OBSERVED: readonly string[] = Object.keys(SAYS);

/**
 * The raw answer of a careful person at this bike, in the condition that the step asks for: what ears, eyes and the meter
 * tell, or `cannot` where the bike has no such thing or no reading that can be used. `situation` is what is believed and
 * was answered so far; what is true is `bike.world`, its rig included. No fault is known here, only the bike.
 * @throws {RangeError} if no bike can answer the step.
 */
export function observe(step: Step, bike: Ridden, situation: Situation, observer: Observer): Answer {
  const say = SAYS[step.id];
  if (!say) throw new RangeError(`step must be one that a bike can answer, got ${step.id}`);
  return say({ step, found: bike, bike: asLeft(bike, situation), situation, observer });
}
