import { cornersOf } from '../rig/corner.ts';
import { usable } from '../steps/outcome.ts';
import type { Answer } from '../steps/step.ts';
import type { TestPoint } from '../steps/test-points.ts';
import { ASKED_RATIO, leastReferenceV } from '../steps/tools/ac-volts.ts';
import type { Moment } from '../world/moment.ts';
import { hold } from './hand.ts';
import { centred } from './left.ts';
import { type Asked, axleAsked, CANNOT } from './observer.ts';
import { acAt, probesAt } from './probes.ts';
import { stepsFrom } from './volume.ts';

/** The left and the right of an axle at one place, fader and balance in the middle, at one step of the volume. */
export function leftAndRight(
  asked: Asked,
  points: readonly [red: TestPoint, black: TestPoint],
  tone: Partial<Moment>,
): Answer {
  const { step, situation, observer } = asked;
  const bike = centred(asked.bike);
  const [left, right] = cornersOf(axleAsked(asked)).map((corner) => probesAt(bike, points, corner));
  if (!left || !right) return CANNOT;
  const readV = (pair: typeof left, change: Partial<Moment>) =>
    acAt(bike, { ...tone, ...change }, pair, observer.meter);
  const strongerV = (volumeRatio?: number) =>
    Math.max(...[left, right].map((pair) => readV(pair, volumeRatio === undefined ? {} : { volumeRatio })));
  const hand = hold(observer);
  const residueV = hand.typed('ac', readV(left, { toneHz: null }));
  for (const volumeRatio of stepsFrom(ASKED_RATIO * leastReferenceV(situation), strongerV)) {
    const answer = {
      readings: {
        residueV,
        leftV: hand.typed('ac', readV(left, { volumeRatio })),
        rightV: hand.typed('ac', readV(right, { volumeRatio })),
      },
    };
    if (usable(step, answer, situation)) return answer;
  }
  return CANNOT;
}
