import type { Corner } from '../rig/corner.ts';
import { usable } from '../steps/outcome.ts';
import type { Answer } from '../steps/step.ts';
import { ASKED_RATIO, leastReferenceV } from '../steps/tools/ac-volts.ts';
import type { Moment } from '../world/moment.ts';
import { hold } from './hand.ts';
import { type Asked, CANNOT } from './observer.ts';
import { acAt, type Probes } from './probes.ts';
import { stepsFrom } from './volume.ts';

export const FRONT = ['unit-front-plus', 'unit-front-minus'] as const;

export const UNIT_REAR = ['unit-rear-plus', 'unit-rear-minus'] as const;

export const INPUT = ['amp-in-plus', 'amp-in-minus'] as const;

export const OUTPUT = ['amp-out-plus', 'amp-out-minus'] as const;

export const TONE = { toneHz: 400, apart: ['amp-outputs'] } as const satisfies Partial<Moment>;

/** Of two pairs the one that reads more: nobody takes a dead one for a reference. */
const stronger = (pairs: readonly (Probes | null)[], volts: (pair: Probes) => number): Probes | null =>
  pairs.reduce((best, pair) => (pair && (!best || volts(pair) > volts(best)) ? pair : best), null);

/**
 * Several AC readings at one volume step: the reference, then the rest. The volume is turned up until the readings can
 * be used; where they never can, it is as if there were no meter.
 */
export function atOneStep(
  { step, situation, observer }: Asked,
  bike: Asked['bike'],
  reference: readonly [name: string, pairs: readonly (Probes | null)[]],
  rest: Readonly<Record<string, Probes | null>>,
  before: Readonly<Record<string, string>> = {},
  tone: Partial<Moment> = TONE,
): Answer {
  const { meter } = observer;
  const readV = (pair: Probes, volumeRatio?: number) =>
    acAt(bike, volumeRatio === undefined ? tone : { ...tone, volumeRatio }, pair, meter);
  const [name, pairs] = reference;
  const pair = stronger(pairs, readV);
  const missing = Object.values(rest).some((other) => other === null);
  if (!pair || missing) return CANNOT;
  const hand = hold(observer);
  for (const volumeRatio of stepsFrom(ASKED_RATIO * leastReferenceV(situation), (v) => readV(pair, v))) {
    const typed = (at: Probes | null) => hand.typed('ac', at ? readV(at, volumeRatio) : 0);
    const others = Object.entries(rest).map(([reading, at]) => [reading, typed(at)]);
    const answer = { readings: { ...before, [name]: typed(pair), ...Object.fromEntries(others) } };
    if (usable(step, answer, situation)) return answer;
  }
  return CANNOT;
}

export const sides = (make: (corner: Corner) => Probes | null) => [make('rear-left'), make('rear-right')] as const;
